// Model: a figure of the figures sheet after checking. Lengths mm, areas cm2.
import type { MeasuredPiece } from './measured.js';
import type { BoxBuild, Build, Dress, KitItem, LengthBuild } from './words.js';

export type BaseShape =
  | { readonly shape: 'round'; readonly acrossMm: number }
  | { readonly shape: 'rectangle'; readonly longMm: number; readonly wideMm: number }
  | { readonly shape: 'oval'; readonly longMm: number; readonly wideMm: number };

/** The painter's own model files of a figure, measured. */
export interface FigureModel {
  /** As written, one or more. */
  readonly files: readonly string[];
  /** Areas in cm2. Parts that a zone or scheme names, or that are known; '' for the rest, which the body chart divides. */
  readonly pieces: readonly MeasuredPiece[];
}

export interface BoxSides {
  readonly longMm: number;
  readonly wideMm: number;
  /** To the eaves, where it has a pitched roof. */
  readonly highMm: number;
  /** To the ridge of the roof, which runs along; absent: the top is flat. */
  readonly ridgeMm?: number;
}

export interface Figure {
  readonly figure: string;
  /** Soles to eyes; absent only for a box, what is measured by one length, or a model. */
  readonly eyeMm?: number;
  readonly build: Build | BoxBuild | LengthBuild;
  readonly dress: Dress;
  readonly kit: readonly { readonly item: KitItem /** 1 or more */; readonly count: number }[];
  readonly base?: BaseShape;
  readonly baseHighMm: number;
  readonly perBase: number;
  readonly boxMm?: BoxSides;
  /** The one length that some builds are measured by. */
  readonly longMm?: number;
  readonly model?: FigureModel;
  /** The painter's own total of body and kit (or hull). */
  readonly areaCm2?: number;
  /** Price of the unpainted figure, whole minor units. */
  readonly priceMinor?: number;
}
