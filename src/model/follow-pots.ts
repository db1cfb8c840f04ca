// Model: what became of the pots of one paint. In: its pots as the pots sheet has them, its rows of the log. Out: each pot's
// life, and the rows that can't be.
import { groupByPaint } from './group-by.js';
import { holdsPaint } from './holds-paint.js';
import { splitWhole } from './money.js';
import type { IsoDate, LogRow, Pot, Sheets } from './sheets.js';
import { sortPots } from './sort-pots.js';

/** A pot as it was last looked into; places are those of the rows in the order of their days. */
export interface PotLife {
  readonly pot: Pot;
  /** Uses from here on come out of it. */
  readonly since: number;
  /** From here on it is gone. */
  readonly until: number;
}

/**
 * `not coming`: no such pot is on its way; `not there`: none is on the shelf; `no size`: nobody knows how large it is;
 * `too many`: more than stand there; `over its size`: more is left than it holds; `gains`: more is left than at the count before.
 */
export type LedgerFault = 'not coming' | 'not there' | 'no size' | 'too many' | 'over its size' | 'gains';

/** What a count ended: the pots that were in use since the readings before, as they were then and as they were found. */
export interface CountSpan {
  readonly row: LogRow;
  /** Places of the first row after the readings before, and of the count. */
  readonly from: number;
  readonly to: number;
  readonly before: readonly Pot[];
  readonly after: readonly Pot[];
}

export interface FollowedPots {
  /** In the order of use; those that are gone stay, since uses before came out of them. */
  readonly lives: readonly PotLife[];
  /** In the order of their days; of one day, as they stand in the log. */
  readonly rows: readonly LogRow[];
  readonly faults: readonly { readonly row: LogRow; readonly fault: LedgerFault; readonly most: number }[];
  /** Only of counts that tell what went since: every pot of the paint is known at both ends. */
  readonly spans: readonly CountSpan[];
}

interface Life {
  pot: Pot;
  since: number;
  until: number;
}

/**
 * One pass over the rows by day and place: what was bought is on its way, what arrived stands on the shelf, a count says
 * what is in the pot in use and how many stand there (the last ones; those before are gone), what was thrown away is gone.
 * Of pots that the pots sheet has counted on a later day a row says nothing.
 */
export function followPots(pots: readonly Pot[], log: readonly LogRow[]): FollowedPots {
  const rows = inOrderOfDays(log);
  const lives: Life[] = sortPots(pots).map((pot) => ({
    ...{ pot, since: placeAfter(rows, pot.countedOn), until: Number.POSITIVE_INFINITY },
  }));
  const faults: { row: LogRow; fault: LedgerFault; most: number }[] = [];
  const spans: CountSpan[] = [];
  let lastUse = -1;
  rows.forEach((row, at) => {
    if (row.what === undefined) {
      lastUse = at;
      return;
    }
    const begun = row.what === 'counted' ? beginSpan(lives, row) : undefined;
    const wrong = steps[row.what](lives, row, { at, lastUse });
    if (wrong !== undefined) faults.push({ row, ...wrong });
    else if (begun !== undefined) spans.push(endSpan(begun, row, at));
  });
  return { lives, rows, faults, spans };
}

interface BegunSpan {
  readonly lives: readonly Life[];
  readonly from: number;
  readonly before: readonly Pot[];
}

/**
 * Undefined where the count leaves something open: the pot in use was not read, a pot that it is not about may have been used,
 * one was thrown away with paint in it, or one was read between and may have been used before.
 */
function beginSpan(lives: readonly Life[], row: LogRow): BegunSpan | undefined {
  const there = lives.filter((life) => isThere(life) && holdsPaint(life.pot));
  const from = Math.min(...there.map(({ since }) => since));
  const isOpen = there.some((life) => !isOfSize(life, row) || (life.since > from && !isSealed(life.pot)));
  const isLost = lives.some(({ until }) => until !== Number.POSITIVE_INFINITY && until > from);
  if (there.length === 0 || row.left === undefined || isOpen || isLost) return undefined;
  return { lives: there, from, before: there.map(({ pot }) => pot) };
}

const isSealed = ({ left, openedOn }: Pot): boolean =>
  openedOn === undefined && left.how === 'by eye' && left.share === 1;

const endSpan = ({ lives, from, before }: BegunSpan, row: LogRow, to: number): CountSpan => ({
  ...{ row, from, to, before },
  after: lives.filter(({ until }) => until === Number.POSITIVE_INFINITY).map(({ pot }) => pot),
});

/** The same list where it is in order already. */
function inOrderOfDays(log: readonly LogRow[]): readonly LogRow[] {
  const isInOrder = log.every((row, at) => at === 0 || (log[at - 1] as LogRow).date <= row.date);
  return isInOrder ? log : log.toSorted((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

/** A reading of some day shows that day's use already. */
function placeAfter(rows: readonly LogRow[], day: IsoDate | undefined): number {
  if (day === undefined) return 0;
  let [from, to] = [0, rows.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((rows[middle] as LogRow).date > day) to = middle;
    else from = middle + 1;
  }
  return from;
}

interface Wrong {
  readonly fault: LedgerFault;
  /** The most that could be. */
  readonly most: number;
}

interface Where {
  readonly at: number;
  /** Place of the use before; -1 where there is none. */
  readonly lastUse: number;
}

type Step = (lives: Life[], row: LogRow, where: Where) => Wrong | undefined;

const steps: Readonly<Record<NonNullable<LogRow['what']>, Step>> = {
  bought: buy,
  arrived: arrive,
  counted: count,
  'thrown away': throwAway,
};

function buy(lives: Life[], row: LogRow, { at }: Where): Wrong | undefined {
  const { paint, sizeMl = lives.at(-1)?.pot.sizeMl, pots = 1, priceMinor, shop } = row;
  if (sizeMl === undefined) return { fault: 'no size', most: 0 };
  const like = lives.find(({ pot }) => pot.sizeMl === sizeMl)?.pot;
  const pot: Pot = {
    ...{ row: row.row, fromLog: true, paint, sizeMl, left: { how: 'by eye', share: 1 }, leftGiven: false },
    ...{ container: like?.container ?? row.container ?? 'pot', ordered: true },
    ...(shop === undefined ? {} : { shop }),
  };
  const prices = priceMinor === undefined ? [] : splitWhole(priceMinor, new Array<number>(pots).fill(1));
  for (let one = 0; one < pots; one++) {
    const paid = prices[one];
    const bought = paid === undefined ? pot : { ...pot, priceMinor: paid };
    lives.push({ pot: bought, since: at, until: Number.POSITIVE_INFINITY });
  }
  return undefined;
}

const isThere = ({ pot, until }: Life): boolean => !pot.ordered && until === Number.POSITIVE_INFINITY;
const isOfSize = ({ pot }: Life, { sizeMl }: LogRow): boolean =>
  sizeMl === undefined || pot.sizeMl === sizeMl;

function arrive(lives: Life[], row: LogRow, { at }: Where): Wrong | undefined {
  const isMeant = ({ pot }: Life): boolean =>
    pot.ordered && (row.shop === undefined || pot.shop === undefined || pot.shop === row.shop);
  const coming = lives.filter((life) => isMeant(life) && isOfSize(life, row));
  for (const life of coming.slice(0, row.pots)) {
    life.pot = { ...life.pot, ordered: false, countedOn: row.date };
    life.since = at + 1;
    lives.splice(lives.indexOf(life), 1);
    lives.splice(lives.findLastIndex((other) => !other.pot.ordered) + 1, 0, life);
  }
  const isShort = coming.length === 0 || coming.length < (row.pots ?? 0);
  return isShort ? { fault: 'not coming', most: coming.length } : undefined;
}

function count(lives: Life[], row: LogRow, { at, lastUse }: Where): Wrong | undefined {
  const ofSize = lives.filter((life) => isThere(life) && isOfSize(life, row));
  if (ofSize.length === 0) return { fault: 'not there', most: 0 };
  const meant = ofSize.filter(({ pot }) => (pot.countedOn ?? '') <= row.date);
  if (meant.length === 0) return undefined;
  const begun = meant.filter(({ pot }) => holdsPaint(pot));
  // Of pots that were all empty one is looked into again.
  const there = begun.length > 0 ? begun : meant;
  const kept = row.pots === undefined ? there : there.slice(-row.pots);
  for (const life of there) if (!kept.includes(life)) life.until = at;
  const inUse = kept[0] as Life;
  if (lastUse >= inUse.since) inUse.pot = { ...inUse.pot, openedOn: inUse.pot.openedOn ?? row.date };
  const wrong = look(inUse, row);
  for (const life of kept) {
    life.since = at + 1;
    life.pot = { ...life.pot, countedOn: row.date };
  }
  return there.length < (row.pots ?? 0) ? { fault: 'too many', most: there.length } : wrong;
}

function look(life: Life, { left }: LogRow): Wrong | undefined {
  if (left === undefined) return undefined;
  const { left: before, sizeMl } = life.pot;
  if (left.how === 'in ml' && left.ml > sizeMl) return { fault: 'over its size', most: sizeMl };
  life.pot = { ...life.pot, left, leftGiven: true };
  const [was, is] = [shareLeft(before, sizeMl), shareLeft(left, sizeMl)];
  return was !== undefined && is !== undefined && is > was + misread
    ? { fault: 'gains', most: was * sizeMl }
    : undefined;
}

/** A reading by eye may be off by so much of the pot. */
const misread = 0.25;

/** 0 to 1; undefined for a weight, which only the density tells. */
const shareLeft = (left: Pot['left'], sizeMl: number): number | undefined =>
  left.how === 'weighed' ? undefined : left.how === 'by eye' ? left.share : left.ml / sizeMl;

function throwAway(lives: Life[], row: LogRow, { at }: Where): Wrong | undefined {
  const { pots = 1 } = row;
  const there = lives.filter((life) => isThere(life) && isOfSize(life, row));
  for (const life of there.slice(0, pots)) life.until = at;
  return there.length < pots ? { fault: 'not there', most: there.length } : undefined;
}

/** The pots of a shelf that are there or on their way, once the log has moved them; the same list where it moves none. */
export function potsThere({ pots, log }: Pick<Sheets, 'pots' | 'log'>): readonly Pot[] {
  const rowsOf = groupByPaint(log.filter(({ what }) => what !== undefined));
  if (rowsOf.size === 0) return pots;
  const potsOf = groupByPaint(pots.filter(({ paint }) => rowsOf.has(paint)));
  const moved = [...rowsOf].flatMap(([paint, rows]) => followPots(potsOf.get(paint) ?? [], rows).lives);
  const there = moved.filter(({ until }) => until === Number.POSITIVE_INFINITY).map(({ pot }) => pot);
  return [...pots.filter(({ paint }) => !rowsOf.has(paint)), ...there];
}
