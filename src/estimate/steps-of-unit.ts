// Estimate: the steps that a unit goes through. In: the unit, the sheets. Out: those of its scheme that lay paint on its figure.
import type { Sheets, Step, Unit } from '../model/sheets.js';
import { partsOfFigure, partsOfZone } from '../model/zones.js';

/** A step on parts that the figure does not have takes no paint. */
export function stepsOfUnit(
  { scheme, figure: name }: Unit,
  { schemes, figures, zones }: Pick<Sheets, 'schemes' | 'figures' | 'zones'>,
): readonly Step[] {
  const figure = figures.get(name);
  const steps = schemes.get(scheme)?.steps ?? [];
  if (figure === undefined) return steps;
  const own = new Set(partsOfFigure(figure));
  return steps.filter(({ zone }) => partsOfZone(zone, figure, zones).some(({ part }) => own.has(part)));
}
