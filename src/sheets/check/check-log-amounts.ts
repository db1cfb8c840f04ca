// Checks: the amounts of the log. In: its rows, the pots of each paint. Out: nothing; what cannot have been used is told.
import { groupBy } from '../../model/group-by.js';
import { type HeldPot, heldOn, leastMostMl, leftMl, type Shelf, slackMl } from './gather-shelf.js';
import type { LogEntry } from './log-entries.js';
import { heaviestPaint } from './read-cell/read-number.js';

const inMl = (ml: number): string => `${Math.round(ml * 10) / 10} ml`;
const inG = (grams: number): string => `${Math.round(grams * 10) / 10} g`;

interface Given {
  readonly shelf: Shelf;
  /** Rows that tell something without an amount too. */
  readonly progress: ReadonlySet<LogEntry>;
}

/** Each row against itself and its pots, then all rows of a paint against what its pots held. */
export function checkLogAmounts(entries: readonly LogEntry[], { shelf, progress }: Given): void {
  const held = new Map<string, PotsOfPaint>();
  const potsOf = (paint: string): PotsOfPaint => {
    const pots = held.get(paint) ?? sumUp(shelf.get(paint) ?? []);
    held.set(paint, pots);
    return pots;
  };
  const uses = entries.flatMap((entry) => {
    const pots = potsOf(entry.paint ?? '');
    if (!isBlank(entry)) return checkAmount(entry, pots) ?? [];
    if (!progress.has(entry)) tellBlank(entry, pots);
    return [];
  });
  for (const [paint, ofPaint] of groupBy(uses, ({ entry }) => entry.paint ?? ''))
    tellOverShelf(ofPaint, shelf.get(paint) ?? []);
}

/** What a row is held against, reckoned once: a ledger may have thousands of rows and pots of one paint. */
interface PotsOfPaint {
  readonly pots: readonly HeldPot[];
  readonly gramsPerMl: number;
  /** The day up to which every open pot has been looked into; '' where one was never, or none is open. */
  readonly lookedIntoOn: string;
  /** The least that a scale can show and the most; undefined where some pot's empty weight is not known. */
  readonly scaleG: { readonly least: number; readonly most: number } | undefined;
  /** Whatever the day, so much can have been in all of them, and in one. */
  readonly surely: { readonly sumMl: number; readonly largestMl: number };
}

function sumUp(pots: readonly HeldPot[]): PotsOfPaint {
  const open = pots.filter(({ pot, isGone }) => !pot.ordered && !isGone);
  const weights = pots.flatMap(({ pot, emptyG }) => (emptyG === undefined ? [] : [{ pot, emptyG }]));
  const most = weights.map(({ pot, emptyG }) => emptyG + pot.sizeMl * heaviestPaint);
  const sure = pots.map((pot) => leastMostMl(pot));
  return {
    pots,
    gramsPerMl: Math.max(...pots.map((pot) => pot.gramsPerMl)),
    lookedIntoOn: open.map(({ pot }) => pot.countedOn ?? '').sort()[0] ?? '',
    scaleG:
      weights.length < pots.length
        ? undefined
        : { least: Math.min(...weights.map(({ emptyG }) => emptyG)), most: Math.max(...most) },
    surely: { sumMl: sum(sure), largestMl: Math.max(0, ...sure) },
  };
}

const amounts = ['beforeG', 'afterG', 'usedMl'] as const;

const isBlank = ({ row }: LogEntry): boolean =>
  amounts.every((key) => row[key] === undefined && !row.bad.includes(key));

/** A row that tells nothing but that some was used asks for nothing once every pot of the paint has been looked into. */
function tellBlank({ sheet, row, paint }: LogEntry, { lookedIntoOn }: PotsOfPaint): void {
  const isCounted = row.date !== undefined && lookedIntoOn >= row.date;
  if (paint === undefined || !isCounted) sheet.blame('log-without-amount', row, 'usedMl');
}

/** What the row used; undefined where it cannot be, and where nothing is known of the paint's pots. */
function checkAmount(entry: LogEntry, pots: PotsOfPaint): Use | undefined {
  if (!isMeasured(entry)) return undefined;
  tellTooLittle(entry);
  const use = useOf(entry, pots);
  if (use === undefined) return undefined;
  checkWeights(entry, pots);
  return tellOverPot(use, pots) ? undefined : use;
}

/** A weight may not rise, and there are two of them. False where it is not so; that is told. */
function isMeasured({ sheet, row }: LogEntry): boolean {
  const { beforeG, afterG, usedMl } = row;
  if (beforeG !== undefined && afterG !== undefined) {
    if (afterG > beforeG) sheet.blame('log-gains', row, 'afterG', { expected: `${beforeG} g` });
    return afterG <= beforeG;
  }
  if (usedMl !== undefined) return true;
  if (amounts.some((key) => row.bad.includes(key))) return false;
  sheet.blame('log-half-weighed', row, beforeG === undefined ? 'beforeG' : 'afterG');
  return false;
}

/** Brush and palette keep more than that at any sitting, ml: from memory, far below the low leftovers. */
const leastPerSitting = 0.001;
/** A kitchen scale shows whole grams. */
const coarseScaleG = 1;

/** A row of so many figures takes a sitting for each batch of its unit. */
function tellTooLittle({ sheet, row, unit }: LogEntry): void {
  const { figures, beforeG, afterG, usedMl = 0 } = row;
  if (unit === undefined || figures === undefined) return;
  const isWeighed = beforeG !== undefined && afterG !== undefined;
  const most = isWeighed ? beforeG - afterG + coarseScaleG : usedMl;
  if (most >= leastPerSitting * Math.ceil(figures / unit.batch)) return;
  const found = isWeighed ? `${inG(beforeG - afterG)} are` : `${usedMl} ml are`;
  sheet.blame('log-too-little', row, 'figures', { found, expected: `${figures} figures` });
}

interface Use {
  readonly entry: LogEntry;
  readonly day: string;
  readonly ml: number;
  readonly isWeighed: boolean;
}

/** Undefined where the paint has no pot or the day is not known. Weights go before a volume. */
function useOf(entry: LogEntry, { pots, gramsPerMl }: PotsOfPaint): Use | undefined {
  const { sheet, row } = entry;
  const { date: day, beforeG, afterG, usedMl } = row;
  if (day === undefined || pots.length === 0) return undefined;
  if (beforeG === undefined || afterG === undefined) return { entry, day, ml: usedMl ?? 0, isWeighed: false };
  const ml = (beforeG - afterG) / gramsPerMl;
  const differs = usedMl !== undefined && Math.abs(usedMl - ml) > Math.max(0.5, ml / 2);
  if (differs) sheet.blame('log-two-amounts', row, 'usedMl', { found: inMl(usedMl), expected: inMl(ml) });
  return { entry, day, ml, isWeighed: true };
}

/** Only where the empty weight of every pot of the paint is known: else another pot may have stood on the scale. */
function checkWeights({ sheet, row }: LogEntry, { scaleG }: PotsOfPaint): void {
  const { beforeG, afterG } = row;
  if (beforeG === undefined || afterG === undefined || scaleG === undefined) return;
  const { least, most } = scaleG;
  if (beforeG > most) sheet.blame('heavier-than-full', row, 'beforeG', { expected: inG(most) });
  if (afterG < least) sheet.blame('below-empty', row, 'afterG', { expected: inG(least) });
}

/** One pot stands on the scale; a volume may come from all of them. */
function tellOverPot({ entry, day, ml, isWeighed }: Use, { pots, surely }: PotsOfPaint): boolean {
  if (ml <= (isWeighed ? surely.largestMl : surely.sumMl)) return false;
  const held = pots.map((pot) => heldOn(pot, day));
  const join = isWeighed ? (all: readonly number[]) => Math.max(...all) : sum;
  if (ml <= join(held.map(({ mostMl }) => mostMl))) return false;
  const isSum = !isWeighed && pots.length > 1;
  const expected = `${inMl(join(held.map((one) => one.ml)))}${isSum ? ` in ${pots.length} pots` : ''}`;
  const { sheet, row } = entry;
  if (isWeighed) {
    const hint = "Check both weights, the pot's size and left, and the density g/ml of the paint.";
    sheet.blame('log-over-pot', row, 'afterG', { found: `about ${inMl(ml)}`, expected, hint });
  } else sheet.blame('log-over-pot', row, 'usedMl', { found: inMl(ml), expected });
  return true;
}

const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);

/** The rows that certainly came after every reading, in the order of their days. */
function tellOverShelf(uses: readonly Use[], pots: readonly HeldPot[]): void {
  const days = pots.flatMap(({ pot }) => (pot.ordered ? [] : (pot.countedOn ?? '')));
  const lastRead = days.sort().at(-1) ?? '';
  const heldMl = sum(pots.map(leftMl));
  const mostMl = heldMl + sum(pots.map(slackMl));
  let usedMl = 0;
  for (const { entry, day, ml, isWeighed } of uses.toSorted((a, b) =>
    a.day < b.day ? -1 : a.day > b.day ? 1 : 0,
  )) {
    if (day <= lastRead) continue;
    usedMl += ml;
    if (usedMl <= mostMl) continue;
    const details = { found: inMl(usedMl), expected: inMl(heldMl) };
    entry.sheet.blame('log-over-shelf', entry.row, isWeighed ? 'afterG' : 'usedMl', details);
    return;
  }
}
