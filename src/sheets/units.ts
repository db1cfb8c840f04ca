// Sheets: units, in a header behind its name and in a cell behind its number. In: text. Out: the number apart, and how many
// of the column's unit one of the cell's is.
import { nameKey } from './match-header.js';

/** What a header may say after its name, and what its cells are in. */
export type Unit = 'ml' | 'mm' | 'g' | '%' | 'cm2' | 'g/ml';

/** As painters spell them, by the key of a name. */
export const spellings: Readonly<Record<Unit, readonly string[]>> = {
  ml: ['ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  g: ['g', 'gram', 'grams', 'gramme', 'grammes'],
  '%': ['%', 'percent', 'pct'],
  cm2: ['cm2', 'cm^2', 'sqcm'],
  'g/ml': ['g/ml', 'gperml'],
};

export const units = Object.keys(spellings) as Unit[];

/** What else a cell may be in, and how many of the unit that is: prefixes of the International System of Units. */
const multiples: Readonly<Record<Unit, Readonly<Record<string, number>>>> = {
  ml: { cl: 10, dl: 100, l: 1000, litre: 1000, litres: 1000, liter: 1000, liters: 1000 },
  mm: { cm: 10 },
  g: { mg: 0.001, kg: 1000 },
  '%': {},
  cm2: { mm2: 0.01, dm2: 100 },
  'g/ml': { 'g/cm3': 1, 'kg/l': 1 },
};

const timesOf: ReadonlyMap<Unit, ReadonlyMap<string, number>> = new Map(
  units.map((unit) => [
    unit,
    new Map([...spellings[unit].map((one) => [one, 1] as const), ...Object.entries(multiples[unit])]),
  ]),
);

/** How many of `unit` one of what is written is: `Litre` gives 1000 for ml, `oz` nothing. */
export const timesUnit = (unit: Unit, written: string): number | undefined =>
  timesOf.get(unit)?.get(nameKey(written));

/** Measures that no column is in: of United States and imperial custom (NIST Handbook 44, appendix C). */
const strange: ReadonlySet<string> = new Set(
  'oz floz fl.oz fl.oz. ounce ounces fluidounce fluidounces lb lbs in inch inches ft pt pint qt gal'.split(
    ' ',
  ),
);

/** Whether a text is a unit of any kind, ours or not. */
export const isMeasure = (written: string): boolean =>
  written.length <= longest &&
  (strange.has(nameKey(written)) || units.some((unit) => timesUnit(unit, written) !== undefined));

/** Looking for what stands behind a number takes the length squared, and a longer cell holds no number. */
const longest = 60;
const behind = /^(.*?[\d.,])\s*([^\d.,\s].*)$/;

/** `17 ml` as `17` and `ml`; undefined where nothing stands behind a number. */
export function partNumber(cell: string): { readonly number: string; readonly suffix: string } | undefined {
  const [, number, suffix] = (cell.length <= longest && behind.exec(cell)) || [];
  return number === undefined || suffix === undefined ? undefined : { number, suffix };
}
