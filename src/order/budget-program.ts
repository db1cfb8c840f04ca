// Order: what a budget finishes of one priority, as an integer program: whole units, or figures of any. In: its units, what is
// committed, the market. Out: columns and rows, and which column counts the figures of each unit.
import { at } from '../model/at.js';
import { demandMl } from '../model/demand-ml.js';
import type { UnitDemand } from '../model/work.js';
import { leaveFarWares } from './bound-wares.js';
import { buildProgram, type OrderProgram } from './build-program.js';
import { listWares } from './list-wares.js';
import type { Market } from './open-market.js';
import type { Column, IntegerProgram, Row } from './solver/integer-program.js';
import type { SplitNeeds } from './split-needs.js';

export interface BudgetLevel {
  readonly budgetMinor: number;
  /** Units of this priority, in painting order. */
  readonly units: readonly UnitDemand[];
  /** What the priorities before it take, by paint. */
  readonly committedMl: ReadonlyMap<string, number>;
  readonly haveMl: ReadonlyMap<string, number>;
  /** To be bought if the whole priority were finished. */
  readonly needs: SplitNeeds;
  /** Undefined: whole units alone count. Else figures of any, of which so many belong to whole units. */
  readonly inWholeUnits: number | undefined;
}

export interface BudgetProgram {
  readonly program: IntegerProgram;
  /** False where there are too many wares for one program: others might finish more. */
  readonly areAllWares: boolean;
  /** For each unit its column, and how many figures one of it stands for. */
  readonly figureColumns: readonly FigureColumn[];
  /** What one of each column costs, in minor units. */
  readonly cashOf: readonly number[];
}

type FigureColumn = readonly [column: number, each: number];

interface UnitColumns {
  readonly figures: FigureColumn;
  /** What it takes of a paint, as columns of its row. */
  readonly usedOf: (paint: string) => Row['terms'];
}

/** A program while it is written; a figure is worth so much cash. */
interface Writing {
  readonly columns: Column[];
  readonly rows: Row[];
  readonly worth: number;
}

const rowFrom = (lower: number, terms: Row['terms']): Row => ({
  lower,
  upper: Number.POSITIVE_INFINITY,
  terms,
});
const rowTo = (upper: number, terms: Row['terms']): Row => ({
  lower: Number.NEGATIVE_INFINITY,
  upper,
  terms,
});
const yesOrNo: Column = { cost: 0, lower: 0, upper: 1, integer: true };

/**
 * Most figures, then least cash. Whole units: a yes-or-no column for each, times all its figures. Else a column for the figures n
 * and one for the sittings k of each unit, `batch x k >= n`, which is exact, sittings being whole; each paint: `bought >= committed + sum(n x per figure + k x per sitting) - have`;
 * `cash <= budget`; minimise `cash - (budget + 1) x sum(n)`. A paint of which the offers lack some for the whole priority may be unmet by that much once all of it is bought (a yes-or-no
 * column): what can't be had stands in nobody's way.
 */
export function writeBudgetProgram(level: BudgetLevel, market: Market): BudgetProgram {
  const { budgetMinor, needs } = level;
  const { wares, areAll } = leaveFarWares(listWares(needs.within, market), needs.within, market);
  const order = buildProgram({ needs: [], wares, held: wares.map(() => 0), shops: market.shops });
  const columns: Column[] = [...order.program.columns];
  const rows: Row[] = [
    ...order.program.rows,
    rowTo(
      budgetMinor,
      order.program.columns.map(({ cost }, column) => [column, cost]),
    ),
  ];
  const writing = { columns, rows, worth: budgetMinor + 1 };
  const placed = placeUnits(level, writing);
  const allMl = (paint: string): number =>
    (order.holders.get(paint) ?? []).reduce((sum, { column, ml }) => sum + ml * at(wares, column).limit, 0);
  for (const { paint } of needs.within) {
    const lackingMl = needs.unmet.find((need) => need.paint === paint)?.ml ?? 0;
    rows.push(
      ...coverRows(
        paint,
        { level, order, placed },
        lackingMl === 0 ? undefined : { lackingMl, allMl: allMl(paint), column: columns.push(yesOrNo) - 1 },
      ),
    );
  }
  const figureColumns = placed.map(({ figures }) => figures);
  const cashOf = columns.map(({ cost }, column) => (column < order.program.columns.length ? cost : 0));
  return { program: { columns, rows }, areAllWares: areAll, figureColumns, cashOf };
}

function placeUnits({ units, inWholeUnits }: BudgetLevel, writing: Writing): UnitColumns[] {
  if (inWholeUnits === undefined) return units.map((demand) => placeWhole(demand, writing));
  const placed = units.map((demand) => placeFigures(demand, writing));
  if (inWholeUnits > 0) keepWhole(units, placed, inWholeUnits, writing);
  return placed;
}

function placeWhole(demand: UnitDemand, { columns, worth }: Writing): UnitColumns {
  const { figures } = demand;
  const column = columns.push({ ...yesOrNo, cost: -worth * figures }) - 1;
  return { figures: [column, figures], usedOf: (paint) => [[column, -demandMl(demand, paint, figures)]] };
}

function placeFigures(demand: UnitDemand, { columns, rows, worth }: Writing): UnitColumns {
  const { figures: count, batch, perFigureMl, perSittingMl } = demand;
  const figures = columns.push({ cost: -worth, lower: 0, upper: count, integer: true }) - 1;
  const sittings = columns.push({ cost: 0, lower: 0, upper: Math.ceil(count / batch), integer: true }) - 1;
  rows.push(
    rowFrom(0, [
      [sittings, batch],
      [figures, -1],
    ]),
  );
  return {
    figures: [figures, 1],
    usedOf: (paint) => [
      [figures, -(perFigureMl.get(paint) ?? 0)],
      [sittings, -(perSittingMl.get(paint) ?? 0)],
    ],
  };
}

/** A yes-or-no column for each unit that is finished whole; of these so many figures at the least. */
function keepWhole(
  units: readonly UnitDemand[],
  placed: readonly UnitColumns[],
  atLeast: number,
  { columns, rows }: Writing,
): void {
  const whole = units.map(({ figures }): [number, number] => [columns.push(yesOrNo) - 1, figures]);
  rows.push(rowFrom(atLeast, whole));
  placed.forEach(({ figures: [column] }, index) => {
    const [isWhole, count] = whole[index] as [number, number];
    rows.push(
      rowFrom(0, [
        [column, 1],
        [isWhole, -count],
      ]),
    );
  });
}

interface Placed {
  readonly level: BudgetLevel;
  readonly order: OrderProgram;
  readonly placed: readonly UnitColumns[];
}

/** A paint that can't be had in full: how much is lacking once all of it is bought, and the column that says so. */
interface Scarce {
  readonly lackingMl: number;
  readonly allMl: number;
  readonly column: number;
}

function coverRows(paint: string, { level, order, placed }: Placed, scarce: Scarce | undefined): Row[] {
  const bought = (order.holders.get(paint) ?? []).map(({ column, ml }): [number, number] => [column, ml]);
  const used = placed.flatMap(({ usedOf }) => usedOf(paint)).filter(([, ml]) => ml !== 0);
  const lower = (level.committedMl.get(paint) ?? 0) - (level.haveMl.get(paint) ?? 0);
  if (scarce === undefined) return [rowFrom(lower, [...bought, ...used])];
  return [
    rowFrom(lower, [...bought, ...used, [scarce.column, scarce.lackingMl]]),
    rowFrom(0, [...bought, [scarce.column, -scarce.allMl]]),
  ];
}

/** The program with no more than so many figures in all. */
export function withMost({ program, figureColumns }: BudgetProgram, mostFigures: number): IntegerProgram {
  if (mostFigures === Number.POSITIVE_INFINITY) return program;
  const fewer = rowTo(Math.max(0, mostFigures), figureColumns);
  return { ...program, rows: [...program.rows, fewer] };
}

/** As many figures at the same cash, but of the first units rather than the later ones. */
export function preferEarlier(
  { program, figureColumns, cashOf }: BudgetProgram,
  found: readonly number[],
): IntegerProgram {
  const total = figureColumns.reduce((sum, [column, each]) => sum + each * at(found, column), 0);
  const cash = Math.round(cashOf.reduce((sum, cost, column) => sum + cost * at(found, column), 0));
  const costOf = new Map(figureColumns.map(([column, each], place) => [column, place * each]));
  return {
    columns: program.columns.map((column, index) => ({ ...column, cost: costOf.get(index) ?? 0 })),
    rows: [
      ...program.rows,
      rowFrom(total, figureColumns),
      rowTo(
        cash,
        cashOf.flatMap((cost, column): [number, number][] => (cost === 0 ? [] : [[column, cost]])),
      ),
    ],
    start: found,
  };
}
