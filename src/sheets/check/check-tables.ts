// Checks, all of them: tables in; typed rows that refer to each other by name out, with every problem found on the way.
import type { Assumptions } from '../../model/assumption.js';
import type { PotLife } from '../../model/follow-pots.js';
import { pairUnits } from '../../model/pair-units.js';
import type { Problem } from '../../model/problem.js';
import type { IsoDate, Sheets } from '../../model/sheets.js';
import { neededSheets, type SheetName, sheetNames } from '../../model/words.js';
import type { ProblemCode } from '../../problems/catalogue.js';
import { orderProblems } from '../../problems/order-problems.js';
import type { ModelFiles } from '../model-file.js';
import type { ReadTables, Table } from '../table.js';
import { type CheckedArmy, checkArmy } from './check-army.js';
import { checkExtras } from './check-extras.js';
import { type CheckedFigures, checkFigures } from './check-figures.js';
import { checkLog } from './check-log.js';
import { checkOffers, type OfferSheet } from './check-offers.js';
import { mergePaints, type PaintSheet, tellRepeatedPaints } from './check-paints.js';
import { checkPots, type PotSheet } from './check-pots.js';
import { type CheckedSchemes, checkSchemes } from './check-schemes.js';
import { checkSettings } from './check-settings.js';
import { type CheckedShops, checkShops } from './check-shops.js';
import { type CheckedSwaps, checkSwaps } from './check-swaps.js';
import { checkPaintCount, checkPaintsHad, checkZonesOnFigures } from './check-use.js';
import { checkZones } from './check-zones.js';
import { type Findings, type LeftAlone, makeFindings, type ReadAs } from './collect-findings.js';
import { findCurrency } from './find-currency.js';
import { gatherShelf } from './gather-shelf.js';
import type { NameBook } from './keep-names.js';
import { nameModelParts } from './name-model-parts.js';
import { namePaints } from './name-paints.js';
import type { From } from './open-sheet.js';
import { openSwaps } from './open-swaps.js';
import { questionHighlights } from './question-highlights.js';
import { questionLeast } from './question-least.js';
import { questionOldPots } from './question-old-pots.js';
import { questionOwned } from './question-owned.js';
import { questionPaints } from './question-paints.js';
import { questionSprays } from './question-sprays.js';
import { anyPrice, priceKind } from './read-cell/read-price.js';
import { readRows } from './read-rows.js';

/** What the checks must know that no sheet says. */
export interface Known {
  readonly assumptions: Assumptions;
  /** The day of the plan, unless the settings name another. */
  readonly today: IsoDate;
  /** The day of the plan whatever the settings name. */
  readonly chosenDay?: IsoDate | undefined;
  /** Model files that figures name; left out where nobody asks for areas. */
  readonly models?: ModelFiles;
}

export interface CheckedSheets {
  /** Undefined where any problem is an error. */
  readonly sheets: Sheets | undefined;
  /** In sheet and row order, those of the readers among them. */
  readonly problems: readonly Problem<ProblemCode>[];
  /** The painter's own columns, which nothing is read from, in sheet order. */
  readonly leftAlone: readonly LeftAlone[];
  /** Columns that are called otherwise than by their own name, in sheet order. */
  readonly readAs: readonly ReadAs[];
}

/** Checks every sheet and how they fit each other. Touches nothing outside its arguments. */
export function checkTables(read: ReadTables, known: Known): CheckedSheets {
  const findings = makeFindings();
  const tables = new Map(read.tables.toReversed().map((table) => [table.sheet, table]));
  const logs = read.tables.filter(({ sheet }) => sheet === 'log');
  const rows = checkAll(tables, { known, findings, unread: unreadSheets(read, tables), logs });
  const problems = orderProblems([...read.problems, ...findings.problems]);
  const isWhole = neededSheets.every((sheet) => tables.has(sheet));
  const isRight = isWhole && problems.every(({ severity }) => severity !== 'error');
  const rank = ({ sheet }: { readonly sheet: string }): number => sheetNames.indexOf(sheet as SheetName);
  const defaults = findings.defaults.toSorted((a, b) => rank(a) - rank(b));
  const leftAlone = findings.leftAlone.toSorted((a, b) => rank(a) - rank(b));
  const readAs = findings.readAs.toSorted((a, b) => rank(a) - rank(b));
  return { sheets: isRight ? { ...rows, defaults } : undefined, problems, leftAlone, readAs };
}

/** Sheets that are there but could not be read, and needed ones that are not: what they hold is not known. */
function unreadSheets(
  { problems }: ReadTables,
  tables: ReadonlyMap<SheetName, Table>,
): ReadonlySet<SheetName> {
  const broken = problems.flatMap(({ severity, sheet }) =>
    severity === 'error' && sheet !== undefined && !tables.has(sheet) ? [sheet] : [],
  );
  return new Set([...broken, ...neededSheets.filter((sheet) => !tables.has(sheet))]);
}

interface Run {
  readonly known: Known;
  readonly findings: Findings;
  readonly unread: ReadonlySet<SheetName>;
  /** A workbook may have two: its own, and the log.csv beside it. */
  readonly logs: readonly Table[];
}

/** The order matters: settings tell the currency, paints the containers, names come before what refers to them. */
function checkAll(tables: ReadonlyMap<SheetName, Table>, run: Run): Omit<Sheets, 'defaults'> {
  const { known, findings, unread } = run;
  const ofSettings = checkSettings(
    { table: tables.get('settings'), terms: { price: anyPrice }, findings },
    known.assumptions,
    findCurrency(tables.values()),
  );
  const settings = onChosenDay(ofSettings.settings, known);
  // Settings that could not be read may name any currency.
  const currency = unread.has('settings') ? undefined : ofSettings.currency;
  const terms = { price: priceKind({ currency, locale: settings.locale }) };
  const from = (sheet: SheetName): From => ({ table: tables.get(sheet), terms, findings });
  const day = settings.date ?? known.today;
  const likelyOf = likelyIn(settings, known);

  const swapRows = openSwaps(from('swaps'));
  const logRows = run.logs.map((table) => readRows('log', { table, terms, findings }));
  const { potRows, paintRows, offerRows, named, paints, pots, shops, offers } = checkStock(from, day);

  const isNamed =
    potRows.has('paint') && !['pots', 'paints', 'offers'].some((sheet) => unread.has(sheet as SheetName));
  const book = isNamed ? named.book : undefined;
  const { figures, zones, schemes } = checkPainted(from, {
    known,
    unread,
    paints: book,
    percentOf: likelyOf,
  });
  const army = checkArmy({ ...from('army'), figures: figures.book, schemes });
  const swaps = checkSwaps(swapRows, { paints: book, paintOf: paints, schemes });
  const swapsRead = unread.has('swaps') ? undefined : swaps;
  const extras = checkExtras(from('extras'));
  const gather = (lives: Iterable<PotLife>) =>
    gatherShelf({ lives, sheet: potRows, paints, assumptions: known.assumptions, settings });
  const used = { paints: book, paintOf: paints, army, schemes, swaps: swapsRead?.entries };
  const log = checkLog(logRows, { ...used, shops, pots, potRows, gather, day });
  recordUncounted(potRows, pots, log);
  questionOldPots(pots, { sheet: potRows, log, years: likelyOf('years of an opened pot'), day });
  const had = { had: hadBy(named.book, potRows, offerRows), pots, shops, offers };
  checkUse({ ...had, findings, army, schemes, swaps: swapsRead, figures, zones: zones.zones, paints: book });
  const naming = { pots: potRows, paints: paintRows, offers: offerRows, swaps: swaps?.entries ?? [] };
  if (book !== undefined && swapsRead !== undefined)
    questionPaints({ book, schemes: schemes.sheet, ...naming });
  return {
    pots,
    paints,
    offers,
    shops: shops.shops,
    figures: figures.figures,
    zones: zones.zones,
    schemes: schemes.schemes,
    army: army.units,
    extras,
    log,
    swaps: swaps?.swaps ?? [],
    settings,
  };
}

/** Paints, and what holds them: pots and offers. */
function checkStock(from: (sheet: SheetName) => From, day: IsoDate) {
  const ofPots = from('pots');
  if (ofPots.table !== undefined) questionOwned(ofPots.table, ofPots.findings);
  const potRows = readRows('pots', ofPots);
  const paintRows = readRows('paints', from('paints'));
  const offerRows = readRows('offers', from('offers'));
  const named = nameAll(potRows, paintRows, offerRows);
  tellRepeatedPaints(paintRows, named.book);
  const paints = mergePaints(named.book, named.describing, paintRows);
  const pots = checkPots(potRows, { book: named.book, paints, day });
  const shops = checkShops({ ...from('shops'), offers: offerRows });
  const offers = checkOffers(offerRows, { paintBook: named.book, shopBook: shops.book, paints });
  return { potRows, paintRows, offerRows, named, paints, pots, shops, offers };
}

const onChosenDay = (settings: Sheets['settings'], { chosenDay }: Known): Sheets['settings'] =>
  chosenDay === undefined ? settings : { ...settings, date: chosenDay };

interface Painting extends Pick<Run, 'known' | 'unread'> {
  readonly paints: NameBook | undefined;
  /** The likely value of an assumption in percent. */
  readonly percentOf: (assumption: string) => number;
}

/** What is painted and how: a model's parts go by their names where zones or schemes have them. */
function checkPainted(from: (sheet: SheetName) => From, { known, unread, paints, percentOf }: Painting) {
  const measured = checkFigures({ ...from('figures'), models: known.models });
  const { book: figures, modelParts } = measured;
  const zones = checkZones({ ...from('zones'), figures, modelParts, percentOf });
  const areKnown = !unread.has('zones') && modelParts !== undefined;
  const schemes = checkSchemes({ ...from('schemes'), paints, zones: areKnown ? zones.book : undefined });
  const { findings } = from('figures');
  const asked = { zones: zones.zones, schemes: schemes.schemes, findings };
  return { figures: { ...measured, figures: nameModelParts(measured.figures, asked) }, zones, schemes };
}

/** The likely value of an assumption: the painter's own, else that of the registry. */
function likelyIn({ overrides }: Sheets['settings'], { assumptions }: Known): (name: string) => number {
  const own = new Map(overrides.map(({ name, likely }) => [name, likely]));
  return (name) => own.get(name) ?? assumptions.get(name)?.likely ?? 0;
}

/** Pots that every log row lowers, since nobody said on which day they were looked into. */
function recordUncounted(sheet: PotSheet, pots: Sheets['pots'], log: Sheets['log']): void {
  const logged = new Set(log.filter(({ what }) => what === undefined).map(({ paint }) => paint));
  const rows = pots.filter(
    (pot) => pot.countedOn === undefined && !pot.ordered && logged.has(pot.paint),
  ).length;
  sheet.useBlank('counted', rows);
}

function nameAll(pots: PotSheet, paints: PaintSheet, offers: OfferSheet) {
  const ofPots = { title: 'the pots sheet', sheet: pots };
  const ofPaints = { title: 'the paints sheet', sheet: paints };
  const describing = [ofPots, ofPaints];
  const offered = offers.rows.flatMap(({ paint }) => paint ?? []);
  return { describing, book: namePaints({ describing, offered, paints: ofPaints }) };
}

/** Paints that a pot or an offer holds, by their names everywhere. */
function hadBy(book: NameBook, ...sheets: readonly (PotSheet | OfferSheet)[]): ReadonlySet<string> {
  const named = sheets.flatMap(({ rows }) => rows.flatMap(({ paint }) => paint ?? []));
  return new Set(named.map((name) => book.find(name) ?? name));
}

interface Used {
  readonly findings: Findings;
  readonly army: CheckedArmy;
  readonly schemes: CheckedSchemes;
  /** Undefined where they could not be read. */
  readonly swaps: CheckedSwaps | undefined;
  readonly figures: CheckedFigures;
  readonly zones: Sheets['zones'];
  readonly paints: NameBook | undefined;
  readonly had: ReadonlySet<string>;
  readonly pots: Sheets['pots'];
  readonly shops: CheckedShops;
  readonly offers: Sheets['offers'];
}

/** A figure or zone that could not be read whole would only give follow-up warnings. */
function checkUse({ findings, army, schemes, swaps, figures, zones, paints, had, ...held }: Used): void {
  const use = { pairs: pairUnits(army.units), schemes };
  const isSpoilt = (...sheets: readonly SheetName[]): boolean =>
    findings.problems.some(
      ({ severity, sheet }) => severity === 'error' && sheet !== undefined && sheets.includes(sheet),
    );
  const spoilt = isSpoilt('figures', 'zones');
  if (!isSpoilt('schemes', 'zones')) questionHighlights(schemes, zones);
  if (!isSpoilt('schemes', 'pots', 'offers')) questionSprays(schemes, held);
  if (!isSpoilt('shops', 'offers')) questionLeast(held.shops, held.offers);
  if (!spoilt && paints !== undefined) checkZonesOnFigures({ ...use, figures: figures.figures, zones });
  if (paints !== undefined) checkPaintCount(use, paints);
  if (paints !== undefined && swaps !== undefined) checkPaintsHad({ ...use, swaps }, paints, had);
}
