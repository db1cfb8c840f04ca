// Checks: what the pots of each paint could hold and weigh. In: pots, their rows, paints, densities. Out: pots by paint.
import type { Assumptions } from '../../model/assumption.js';
import type { PotLife } from '../../model/follow-pots.js';
import { groupBy } from '../../model/group-by.js';
import type { IsoDate, Paint, Pot, Settings } from '../../model/sheets.js';
import type { OwnedPot, PotSheet } from './check-pots.js';
import { hasErrors } from './collect-findings.js';

export interface HeldPot {
  readonly pot: Pot;
  readonly emptyG: number | undefined;
  /** The log says that it is there no more. */
  readonly isGone: boolean;
  readonly gramsPerMl: number;
}

/** Pots by paint; a paint without a pot has no entry. */
export type Shelf = ReadonlyMap<string, readonly HeldPot[]>;

interface Given {
  readonly lives: Iterable<PotLife>;
  readonly owned: readonly OwnedPot[];
  readonly sheet: PotSheet;
  readonly paints: ReadonlyMap<string, Paint>;
  readonly assumptions: Assumptions;
  readonly settings: Settings;
}

/** Nothing is known of a shelf whose sheet has errors: what is said of it would only repeat them. */
export function gatherShelf({ lives, owned, sheet, paints, assumptions, settings }: Given): Shelf {
  if (hasErrors(sheet.findings, 'pots')) return new Map();
  const emptyGOf = new Map(
    owned.flatMap(({ pot, row: { emptyG } }) =>
      emptyG === undefined ? [] : [[nameOf(pot), emptyG] as const],
    ),
  );
  const usual = (name: string): number | undefined =>
    settings.overrides.find((own) => own.name === name)?.likely ?? assumptions.get(name)?.likely;
  const held = [...lives].flatMap(({ pot, until }): HeldPot[] => {
    const paint = paints.get(pot.paint);
    const gramsPerMl = paint?.densityGPerMl ?? usual(densityName(pot, paint));
    if (gramsPerMl === undefined) return [];
    const emptyG = pot.fromLog ? undefined : emptyGOf.get(nameOf(pot));
    return [{ pot, isGone: until !== Number.POSITIVE_INFINITY, emptyG, gramsPerMl }];
  });
  return groupBy(held, ({ pot }) => pot.paint);
}

/** The log changes what is in a pot, not its row. */
const nameOf = ({ paint, row }: Pot): string => `${row} ${paint}`;

/** The assumption that stands in where the painter gives no density. */
function densityName({ container }: Pot, paint: Paint | undefined): string {
  if (container === 'can') return 'density in a can';
  return paint?.kind === 'wash' ? 'density of a wash' : 'density';
}

/** Pots hold a little more than their label says. */
const overfill = 0.1;
/** What is left may be read wrongly by so much of the pot's size; beyond it the reading or the use is wrong. */
const misread = 0.25;

/** Labelled ml in a pot as its row says; a pot on its way counts as full. */
export function leftMl({ pot, gramsPerMl }: HeldPot): number {
  const { left, sizeMl, ordered } = pot;
  if (ordered) return sizeMl;
  if (left.how === 'by eye') return sizeMl * left.share;
  return left.how === 'in ml' ? left.ml : Math.min(sizeMl, (left.grams - left.emptyGrams) / gramsPerMl);
}

/** How far off `leftMl` may be, in ml. */
export const slackMl = ({ pot }: HeldPot): number => pot.sizeMl * (pot.leftGiven ? misread : overfill);

/** What a pot can have held on any day at all. */
export const leastMostMl = (held: HeldPot): number =>
  Math.min(held.pot.sizeMl * (1 + overfill), leftMl(held) + slackMl(held));

/** What a pot held on a day, and the most that it can have held; the reading counts only where it came before. */
export function heldOn(held: HeldPot, day: IsoDate): { readonly ml: number; readonly mostMl: number } {
  const { sizeMl, countedOn, ordered } = held.pot;
  const fullMl = sizeMl * (1 + overfill);
  if (ordered || countedOn === undefined || countedOn >= day) return { ml: sizeMl, mostMl: fullMl };
  return { ml: leftMl(held), mostMl: leastMostMl(held) };
}
