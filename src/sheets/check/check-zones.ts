// Checks: the zones sheet. In: its rows, the figures. Out: the painter's zones, and a book of every zone there is.
import type { OwnZone } from '../../model/sheets.js';
import { type Part, type PartShare, parts, readyMadeZones, shareOf } from '../../model/zones.js';
import { zoneWords } from '../columns/choice-words.js';
import { foldName } from './fold-name.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import { partsNear } from './list-words.js';
import type { From } from './open-sheet.js';
import { Mistake } from './read-cell/cell-kind.js';
import { readPart } from './read-cell/read-name.js';
import { readShare } from './read-cell/read-share.js';
import { type RowIn, readRows, type SheetOf } from './read-rows.js';
import { findKnown, tellRepeat } from './tell-names.js';
import { whatIsKnown } from './what-is-known.js';

type ZoneSheet = SheetOf<'zones'>;
type Row = RowIn<'zones'>;

interface Given extends From {
  /** Undefined where figures cannot be looked up. */
  readonly figures: NameBook | undefined;
  /** The likely value of an assumption in percent. */
  readonly percentOf: (assumption: string) => number;
  /** Parts that models of figures name; undefined where they cannot be looked up. */
  readonly modelParts: NameBook | undefined;
}

interface CheckedZones {
  readonly zones: readonly OwnZone[];
  /** Parts, ready-made zones and the painter's own. */
  readonly book: NameBook;
}

const partByKey: ReadonlyMap<string, Part> = new Map(parts.map((part) => [foldName(part), part]));

/** The painter's zones in row order. */
export function checkZones({ figures, modelParts, percentOf, ...from }: Given): CheckedZones {
  const sheet = readRows('zones', from);
  const ready = makeNameBook();
  const book = makeNameBook();
  for (const name of readyMadeZones.keys()) {
    ready.add(name);
    book.add(name);
  }
  for (const name of modelParts?.all() ?? []) book.add(name);
  for (const { zone } of sheet.rows) if (zone !== undefined) book.add(zone);
  for (const [name, others] of Object.entries(zoneWords))
    for (const other of others.split(', ')) if (book.find(other) === undefined) book.alias(other, name);
  const first = new Map<string, string>();
  const zones = sheet.rows.flatMap(
    (row) => checkRow(sheet, row, { book, ready, figures, modelParts, percentOf, first }) ?? [],
  );
  return { zones, book };
}

interface Beside extends Omit<Given, keyof From> {
  readonly book: NameBook;
  readonly ready: NameBook;
  readonly first: Map<string, string>;
}

function checkRow(sheet: ZoneSheet, row: Row, beside: Beside): OwnZone | undefined {
  const shares = readParts(sheet, row, beside);
  const at = { key: 'figure', name: row.figure, book: beside.figures } as const;
  const figure = findKnown(sheet, row, { ...at, code: 'unknown-figure' });
  if (row.zone === undefined) return undefined;
  if (beside.ready.find(row.zone) !== undefined) sheet.blame('zone-name-taken', row, 'zone');
  const zone = beside.book.add(row.zone);
  const name = `${zone}\n${foldName(row.figure ?? '')}`;
  if (tellRepeat(sheet, row, { key: 'zone', name, first: beside.first })) return undefined;
  return { zone, ...whatIsKnown({ figure }), parts: shares };
}

/** A part's name alone comes first: that of a model may end like a share, as `arm 2`. */
function readOne(piece: string, modelParts: NameBook | undefined) {
  const find = (name: string): Part | undefined => partByKey.get(foldName(name)) ?? modelParts?.find(name);
  const whole = find(piece);
  if (whole !== undefined) return { name: piece, part: whole, share: 1 };
  const { name, share } = readPart(piece, readShare);
  return { name, part: find(name), share };
}

/** Shares by part; the same part may be named twice as long as it stays within the whole. */
function readParts(sheet: ZoneSheet, row: Row, beside: Beside): readonly PartShare[] {
  const shares = new Map<Part, number>();
  for (const piece of row.parts ?? []) {
    const { name, part, share } = readOne(piece, beside.modelParts);
    if (part === undefined) tellUnknownPart(sheet, row, name === '' ? piece : name, beside);
    if (share instanceof Mistake) {
      sheet.blame(share.code, row, 'parts', { found: piece, expected: share.expected });
    } else if (part !== undefined) shares.set(part, (shares.get(part) ?? 0) + share);
  }
  for (const [found, share] of shares) {
    if (share <= 1 + 1e-9) continue;
    sheet.blame('part-over-whole', row, 'parts', { found, expected: `${Number((share * 100).toFixed(2))}%` });
  }
  return [...shares].map(([part, share]) => ({ part, share: Math.min(1, share) }));
}

function tellUnknownPart(sheet: ZoneSheet, row: Row, name: string, beside: Beside): void {
  const { book, percentOf, modelParts } = beside;
  if (modelParts === undefined) return;
  const zone = book.find(name);
  if (zone === undefined) {
    sheet.blame('unknown-part', row, 'parts', { found: name, expected: partsNear(name) });
  } else {
    sheet.blame('zone-in-zone', row, 'parts', { found: name, expected: partsInWords(zone, percentOf) });
  }
}

/** `thighs, lower legs 50%`; '' for a zone of the painter's own, whose parts stand in the same sheet. */
function partsInWords(zone: string, percentOf: Beside['percentOf']): string {
  return (readyMadeZones.get(zone) ?? [])
    .map((one) => ({ part: one.part, share: shareOf(one, percentOf) }))
    .map(({ part, share }) => (share === 1 ? part : `${part} ${Number((share * 100).toFixed(2))}%`))
    .join(', ');
}
