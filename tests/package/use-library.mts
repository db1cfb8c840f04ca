// What another program may write. The package test copies this file into a folder where halfpot is installed, looks at
// its types there and runs it. In: a folder of sheets. Out: a line of JSON.
import { writeFileSync } from 'node:fs';
import { argv, stdout } from 'node:process';
import {
  openSolver,
  type Plan,
  planArmy,
  readSheets,
  renderBench,
  renderCompare,
  renderReport,
  renderShop,
  wordProblem,
  writePlanJson,
  writeReorderCsv,
} from 'halfpot';

const today = '2026-03-14';

const { sheets, problems } = await readSheets(argv[2] ?? '.', today);
if (sheets === undefined) throw new Error(problems.map(wordProblem).join('\n'));

const plan: Plan = await planArmy(sheets, today);
const solver = openSolver();
const again = await planArmy(sheets, today, { solve: solver.solve, budgetMinor: 2000 });
await solver.close();

// @ts-expect-error a budget is a number of minor units
planArmy(sheets, today, { budgetMinor: '20' }).catch(() => undefined);
// @ts-expect-error a plan has no such stage
plan.nothing;

const cash: number = plan.order.totalMinor;
const use: string = plan.costs.useWhole.exactMinor.toFixed(0);
const names: readonly string[] = plan.stock.map(({ paint }) => paint);
writeFileSync('report.html', await renderReport(plan, problems));
writeFileSync('shop.html', await renderShop(plan));
writeFileSync('bench.html', await renderBench(plan));
const named = { name: 'army', planJson: writePlanJson(plan, problems), sheets };
writeFileSync('compare.html', await renderCompare(named, named));
writeFileSync('reorder.csv', writeReorderCsv(plan));
writeFileSync('plan.json', writePlanJson(plan, problems));
stdout.write(
  JSON.stringify({ cash, use, paints: names.length, again: again.order.totalMinor, budget: again.budget !== undefined }),
);
