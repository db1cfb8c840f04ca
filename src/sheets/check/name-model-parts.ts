// Checks: which parts of a model go by their own name. In: figures, zones, schemes. Out: figures, what nobody names put together.

import type { Figure, FigureModel } from '../../model/figure.js';
import type { OwnZone, Scheme } from '../../model/sheets.js';
import { isBasePart, parts as knownParts } from '../../model/zones.js';
import { type Findings, useDefault } from './collect-findings.js';

interface Asked {
  readonly zones: readonly OwnZone[];
  readonly schemes: ReadonlyMap<string, Scheme>;
  readonly findings: Findings;
}

/**
 * A part keeps its name where a zone or a step of a scheme names it, and where it is a known part. All others are divided
 * by the body chart, which is recorded with the defaults.
 */
export function nameModelParts(
  figures: ReadonlyMap<string, Figure>,
  { zones, schemes, findings }: Asked,
): ReadonlyMap<string, Figure> {
  if (![...figures.values()].some(({ model }) => model !== undefined)) return figures;
  const asked = new Set([
    ...knownParts,
    ...zones.flatMap(({ parts }) => parts.map(({ part }) => part)),
    ...[...schemes.values()].flatMap(({ steps }) => steps.map(({ zone }) => zone)),
  ]);
  const named = [...figures].map(([name, figure]): [string, Figure] => [
    name,
    figure.model === undefined ? figure : { ...figure, model: putTogether(figure.model, asked) },
  ]);
  const divided = named.filter(([, { model }]) => model?.pieces.some(({ part }) => part === ''));
  const meaning = 'no zone or scheme names parts of it: divided as the body chart has it';
  useDefault(findings, { sheet: 'figures', column: 'model', rows: divided.length, meaning });
  return new Map(named);
}

function putTogether(model: FigureModel, asked: ReadonlySet<string>): FigureModel {
  const isNamed = (part: string): boolean => asked.has(part) || isBasePart(part);
  return {
    ...model,
    pieces: model.pieces.map((piece) => (isNamed(piece.part) ? piece : { ...piece, part: '' })),
  };
}
