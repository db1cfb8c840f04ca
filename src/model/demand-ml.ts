// Model: paint for some figures of a unit. In: its demand, how many. Out: ml; and how many figures some ml are enough for.
import { lastWhere } from './last-where.js';
import { sameMl } from './volume.js';
import type { UnitDemand } from './work.js';

/** Ml for so many figures; no figures, none. */
export function demandMl(
  { perFigureMl, perSittingMl, batch }: UnitDemand,
  paint: string,
  figures: number,
): number {
  const perFigure = perFigureMl.get(paint) ?? 0;
  return perFigure * figures + (perSittingMl.get(paint) ?? 0) * Math.ceil(figures / batch);
}

/** Of a unit, the figures that so many ml are enough for. */
export const figuresWithin = (demand: UnitDemand, paint: string, ml: number): number =>
  lastWhere(0, demand.figures, (figures) => demandMl(demand, paint, figures) <= ml + sameMl);
