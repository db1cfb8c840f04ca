// Checks, all of them: tables in; typed rows that refer to each other by name out, with every problem found on the way.
import type { Assumptions } from '../../model/assumption.js';
import type { PotLife } from '../../model/follow-pots.js';
import { groupBy } from '../../model/group-by.js';
import { pairUnits } from '../../model/pair-units.js';
import type { Problem } from '../../model/problem.js';
import type { IsoDate, SheetRead, Sheets } from '../../model/sheets.js';
import { missingSheets, type SheetName, sheetNames } from '../../model/words.js';
import type { ProblemCode } from '../../problems/catalogue.js';
import { orderProblems } from '../../problems/order-problems.js';
import type { ModelFiles } from '../model-file.js';
import { isNeededSheet } from '../read/check-shape.js';
import type { ReadTables, Table } from '../table.js';
import { type CheckedArmy, checkArmy } from './check-army.js';
import { checkExtras } from './check-extras.js';
import { type CheckedFigures, checkFigures } from './check-figures.js';
import { checkLog } from './check-log.js';
import { type CheckedSchemes, checkSchemes } from './check-schemes.js';
import { checkSettings } from './check-settings.js';
import { type CheckedShops, questionLeast } from './check-shops.js';
import { checkStock, hadBy, recordUncounted } from './check-stock.js';
import { type CheckedSwaps, checkSwaps } from './check-swaps.js';
import { checkPaintCount, checkPaintsHad, checkZonesOnFigures } from './check-use.js';
import { checkZones } from './check-zones.js';
import { type Findings, hasErrors, makeFindings } from './collect-findings.js';
import { expandSwaps } from './expand-swaps.js';
import { findCurrency } from './find-currency.js';
import { gatherShelf } from './gather-shelf.js';
import type { NameBook } from './keep-names.js';
import { nameModelParts } from './name-model-parts.js';
import type { From } from './open-sheet.js';
import { openSwaps, type SwapSheet } from './open-swaps.js';
import { questionHighlights } from './question-highlights.js';
import { questionOldPots } from './question-old-pots.js';
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
  /** In sheet order. One that counts as missing, as nothing stands below its headers, has no columns. */
  readonly read: readonly SheetRead[];
}

/** Checks every sheet and how they fit each other. Touches nothing outside its arguments. */
export function checkTables(read: ReadTables, known: Known): CheckedSheets {
  const findings = makeFindings();
  // One with nothing below its headers is as good as none.
  const filled = read.tables.filter(({ sheet, rows }) => rows.length > 0 || !isNeededSheet(sheet));
  const tables = groupBy(filled, ({ sheet }) => sheet);
  const logs = tables.get('log') ?? [];
  const rows = checkAll(tables, { known, findings, unread: unreadSheets(read, tables), logs });
  const problems = orderProblems([...read.problems, ...findings.problems]);
  const isWhole = missingSheets((sheet) => tables.has(sheet)).length === 0;
  const isRight = isWhole && problems.every(({ severity }) => severity !== 'error');
  const rank = ({ sheet }: { readonly sheet: string }): number => sheetNames.indexOf(sheet as SheetName);
  const defaults = findings.defaults.toSorted((a, b) => rank(a) - rank(b));
  const sheetsRead = findings.read.toSorted((a, b) => rank(a) - rank(b));
  if (!isRight) return { sheets: undefined, problems, read: sheetsRead };
  const bare = read.tables
    .filter((table) => !filled.includes(table))
    .map(({ sheet, file, headerRow }) => ({ sheet, file, headerRow, columns: [] }));
  const allRead = [...sheetsRead, ...bare].toSorted((a, b) => rank(a) - rank(b));
  return { sheets: { ...rows, defaults, read: sheetsRead }, problems, read: allRead };
}

/** Sheets that are there but could not be read, and needed ones that are not: what they hold is not known. */
function unreadSheets(
  { problems }: ReadTables,
  tables: ReadonlyMap<SheetName, readonly Table[]>,
): ReadonlySet<SheetName> {
  const broken = problems.flatMap(({ severity, sheet, file }) => {
    const isRead = sheet !== undefined && tables.get(sheet)?.some((table) => table.file === file) === true;
    return severity === 'error' && sheet !== undefined && !isRead ? [sheet] : [];
  });
  return new Set([...broken, ...missingSheets((sheet) => tables.has(sheet))]);
}

interface Run {
  readonly known: Known;
  readonly findings: Findings;
  readonly unread: ReadonlySet<SheetName>;
  /** A workbook may have two: its own, and the log.csv beside it. */
  readonly logs: readonly Table[];
}

/** The order matters: settings tell the currency, paints the containers, names come before what refers to them. */
function checkAll(
  tables: ReadonlyMap<SheetName, readonly Table[]>,
  run: Run,
): Omit<Sheets, 'defaults' | 'read'> {
  const { known, findings, unread } = run;
  const [ownSettings, ...more] = tables.get('settings') ?? [];
  const ofSettings = checkSettings(
    { table: ownSettings, more, terms: { price: anyPrice }, findings },
    known.assumptions,
    findCurrency([...tables.values()].flat()),
  );
  const settings = onChosenDay(ofSettings.settings, known);
  // Settings that could not be read may name any currency.
  const currency = unread.has('settings') ? undefined : ofSettings.currency;
  const terms = { price: priceKind({ currency, locale: settings.locale }) };
  const from = opener(tables, { terms, findings });
  const day = settings.date ?? known.today;
  const likelyOf = likelyIn(settings, known);

  const isFromScratch = !tables.has('pots') && !unread.has('pots');
  const swapRows = openSwaps(from('swaps'));
  const logRows = run.logs.map((table) => readRows('log', { table, terms, findings }));
  const areRangesKnown = !unread.has('pots') && !unread.has('paints');
  const stock = checkStock(from, { day, areRangesKnown, isFromScratch });
  const { potRows, paintRows, offerRows, named, paints, owned, pots, shops, offers } = stock;

  const isNamed =
    (isFromScratch || potRows.has('paint')) &&
    !['pots', 'paints', 'offers'].some((sheet) => unread.has(sheet as SheetName));
  const book = isNamed ? named.book : undefined;
  const painted = checkPainted(from, { known, unread, paints: book, percentOf: likelyOf, swapRows });
  const { figures, zones, army, schemes } = painted;
  const swaps = checkSwaps(painted.sheet, { paints: book, paintOf: paints, schemes });
  const swapsRead = unread.has('swaps') ? undefined : swaps;
  const extras = checkExtras(from('extras'));
  const gather = (lives: Iterable<PotLife>) =>
    gatherShelf({ lives, owned, sheet: potRows, paints, assumptions: known.assumptions, settings });
  const used = { paints: book, paintOf: paints, army, schemes, swaps: swapsRead?.entries };
  const log = checkLog(logRows, { ...used, shops, pots, potRows, gather, day });
  recordUncounted(potRows, owned, log);
  questionOldPots(owned, { sheet: potRows, log, years: likelyOf('years of an opened pot'), day });
  const isAnyHad = tables.has('pots') || tables.has('offers');
  const had = { had: isAnyHad ? hadBy(named.book, potRows, offerRows) : undefined, pots, shops, offers };
  checkUse({ ...had, findings, army, schemes, swaps: swapsRead, figures, zones: zones.zones, paints: book });
  const naming = { pots: potRows, paints: paintRows, offers: offerRows, swaps: swaps?.entries ?? [] };
  if (book !== undefined && swapsRead !== undefined)
    questionPaints({ book, schemes: schemes.sheet, ...naming });
  return {
    ...{ pots, paints, offers, extras, log, settings },
    shops: shops.shops,
    figures: figures.figures,
    zones: zones.zones,
    schemes: schemes.schemes,
    army: army.units,
    swaps: swaps?.swaps ?? [],
  };
}

const opener =
  (tables: ReadonlyMap<SheetName, readonly Table[]>, beside: Pick<From, 'terms' | 'findings'>) =>
  (sheet: SheetName): From => {
    const [table, ...more] = tables.get(sheet) ?? [];
    return { table, more, ...beside };
  };

const onChosenDay = (settings: Sheets['settings'], { chosenDay }: Known): Sheets['settings'] =>
  chosenDay === undefined ? settings : { ...settings, date: chosenDay };

interface Painting extends Pick<Run, 'known' | 'unread'> {
  readonly paints: NameBook | undefined;
  /** The likely value of an assumption in percent. */
  readonly percentOf: (assumption: string) => number;
  readonly swapRows: SwapSheet;
}

/** What is painted and how: a model's parts go by their names where zones or schemes have them. */
function checkPainted(
  from: (sheet: SheetName) => From,
  { known, unread, paints, percentOf, swapRows }: Painting,
) {
  const measured = checkFigures({ ...from('figures'), models: known.models });
  const { book: figures, modelParts } = measured;
  const zones = checkZones({ ...from('zones'), figures, modelParts, percentOf });
  const areKnown = !unread.has('zones') && modelParts !== undefined;
  const schemes = checkSchemes({ ...from('schemes'), paints, zones: areKnown ? zones.book : undefined });
  const { findings } = from('figures');
  const asked = { zones: zones.zones, schemes: schemes.schemes, findings };
  const army = checkArmy({ ...from('army'), figures, schemes });
  const byUnit = expandSwaps(swapRows, { army, schemes });
  return { figures: { ...measured, figures: nameModelParts(measured.figures, asked) }, zones, ...byUnit };
}

/** The likely value of an assumption: the painter's own, else that of the registry. */
function likelyIn({ overrides }: Sheets['settings'], { assumptions }: Known): (name: string) => number {
  const own = new Map(overrides.map(({ name, likely }) => [name, likely]));
  return (name) => own.get(name) ?? assumptions.get(name)?.likely ?? 0;
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
  /** Undefined without pots and offers, where nothing is had. */
  readonly had: ReadonlySet<string> | undefined;
  readonly pots: Sheets['pots'];
  readonly shops: CheckedShops;
  readonly offers: Sheets['offers'];
}

/** A figure or zone that could not be read whole would only give follow-up warnings. */
function checkUse({ findings, army, schemes, swaps, figures, zones, paints, had, ...held }: Used): void {
  const use = { pairs: pairUnits(army.units), schemes };
  const isSpoilt = (...sheets: readonly SheetName[]): boolean => hasErrors(findings, ...sheets);
  const spoilt = isSpoilt('figures', 'zones');
  if (!isSpoilt('schemes', 'zones')) questionHighlights(schemes, zones);
  if (!isSpoilt('schemes', 'pots', 'offers')) questionSprays(schemes, held);
  if (!isSpoilt('shops', 'offers')) questionLeast(held.shops, held.offers);
  if (!spoilt && paints !== undefined) checkZonesOnFigures({ ...use, figures: figures.figures, zones });
  if (paints !== undefined) checkPaintCount(use, paints);
  if (paints !== undefined && swaps !== undefined && had !== undefined)
    checkPaintsHad({ ...use, swaps }, paints, had);
}
