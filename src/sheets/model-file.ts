// Sheets: what became of a model file, between the readers (files to measures) and the checks (measures to figures).
import type { MeasuredModel } from '../model/measured.js';

/** Each is a problem code. */
type ModelFault =
  | 'model-missing'
  | 'model-outside'
  | 'model-type'
  | 'model-unreadable'
  | 'model-broken'
  | 'model-too-large';

export type ModelFile =
  | { readonly model: MeasuredModel }
  | {
      readonly fault: ModelFault /** In words, where the code's have a place for it. */;
      readonly detail: string;
    };

/** By name as it stands in the sheet. */
export type ModelFiles = ReadonlyMap<string, ModelFile>;
