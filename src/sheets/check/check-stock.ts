// Checks: paints, and what holds them: pots, offers and shops. In: their tables. Out: rows, and the book of paint names.
import type { IsoDate, Sheets } from '../../model/sheets.js';
import type { SheetName } from '../../model/words.js';
import { checkOffers, type OfferSheet } from './check-offers.js';
import { mergePaints, type PaintSheet, tellRepeatedPaints } from './check-paints.js';
import { checkPots, type OwnedPot, type PotSheet } from './check-pots.js';
import { checkShops } from './check-shops.js';
import { makeFindings } from './collect-findings.js';
import { expandRanges } from './expand-ranges.js';
import type { NameBook } from './keep-names.js';
import { namePaints } from './name-paints.js';
import { type From, tablesOf } from './open-sheet.js';
import { questionOwned } from './question-own-columns.js';
import { readRows } from './read-rows.js';

interface StockInputs {
  readonly day: IsoDate;
  readonly areRangesKnown: boolean;
  /** Schemes name paints too. */
  readonly isFromScratch: boolean;
}

/** A range in offers stands for each of its paints. */
export function checkStock(
  from: (sheet: SheetName) => From,
  { day, areRangesKnown, isFromScratch }: StockInputs,
) {
  const ofPots = from('pots');
  for (const table of tablesOf(ofPots)) questionOwned(table, ofPots.findings);
  const potRows = readRows('pots', ofPots);
  const paintRows = readRows('paints', from('paints'));
  const writtenOffers = readRows('offers', from('offers'));
  const wanted = isFromScratch ? paintsOfSchemes(from('schemes')) : [];
  const named = nameAll({ pots: potRows, paints: paintRows, offers: writtenOffers, wanted });
  const offerRows = expandRanges(writtenOffers, { ...named, areRangesKnown });
  tellRepeatedPaints(paintRows, named.book);
  const paints = mergePaints(named.book, named.describing, paintRows);
  const owned = checkPots(potRows, { book: named.book, paints, day });
  const pots = owned.map(({ pot }) => pot);
  const shops = checkShops({ ...from('shops'), offers: offerRows });
  const offers = checkOffers(offerRows, { paintBook: named.book, shopBook: shops.book, paints });
  return { potRows, paintRows, offerRows, named, paints, owned, pots, shops, offers };
}

/** Where there are no pots, the schemes name paints. What is wrong in them is told when they are checked. */
const paintsOfSchemes = (from: From): readonly string[] =>
  readRows('schemes', { ...from, findings: makeFindings() }).rows.flatMap(({ paint }) => paint ?? []);

interface Naming {
  readonly pots: PotSheet;
  readonly paints: PaintSheet;
  readonly offers: OfferSheet;
  /** Paints that are named without being described. */
  readonly wanted: readonly string[];
}

function nameAll({ pots, paints, offers, wanted }: Naming) {
  const ofPots = { title: 'the pots sheet', sheet: pots };
  const ofPaints = { title: 'the paints sheet', sheet: paints };
  const describing = [ofPots, ofPaints];
  const offered = [...offers.rows.flatMap(({ paint }) => paint ?? []), ...wanted];
  return { describing, book: namePaints({ describing, offered, paints: ofPaints }) };
}

/** Paints that a pot or an offer holds, by their names everywhere. */
export function hadBy(book: NameBook, ...sheets: readonly (PotSheet | OfferSheet)[]): ReadonlySet<string> {
  const named = sheets.flatMap(({ rows }) => rows.flatMap(({ paint }) => paint ?? []));
  return new Set(named.map((name) => book.find(name) ?? name));
}

/** Pots that every log row lowers, since nobody said on which day they were looked into. */
export function recordUncounted(sheet: PotSheet, owned: readonly OwnedPot[], log: Sheets['log']): void {
  const logged = new Set(log.filter(({ what }) => what === undefined).map(({ paint }) => paint));
  const uncounted = owned.filter(
    ({ pot }) => pot.countedOn === undefined && !pot.ordered && logged.has(pot.paint),
  );
  sheet.useBlank('counted', new Set(uncounted.map(({ row }) => row)).size);
}
