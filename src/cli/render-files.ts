// Command line: the files of a plan. In: plan, view, sheets, problems. Out: names and contents in the order of writing.
import type { planArmy } from '../plan-army.js';
import { loadPageLibrary } from '../report/page/fill-templates.js';
import { renderBench, renderReport, renderShop } from '../report/page/render-report.js';
import type { ReportView } from '../report/page/view.js';
import { describePlan } from '../report/plan-json/describe-plan.js';
import { writePlanJson } from '../report/plan-json/write-plan-json.js';
import { viewReorder } from '../report/reorder/view-reorder.js';
import { writeReorderCsv } from '../report/reorder/write-reorder-csv.js';
import { writeReorderWorkbook } from '../report/reorder/write-reorder-workbook.js';
import { type EstimateSheets, viewEstimate } from '../report/workbook/estimate/view-estimate.js';
import { loadWorkbookLibrary } from '../report/workbook/open-workbook.js';
import { writeEstimateWorkbook } from '../report/workbook/write-estimate-workbook.js';
import type { Problem } from './show-problems.js';
import type { OutputFile } from './write-files.js';

/** plan.json comes last: where it stands, the others stand too. */
export const outputNames = [
  'report.html',
  'shop.html',
  'bench.html',
  'reorder.csv',
  'reorder.xlsx',
  'estimate.xlsx',
  'plan.json',
] as const;

interface Planned {
  readonly plan: Awaited<ReturnType<typeof planArmy>>;
  readonly view: ReportView;
  readonly sheets: EstimateSheets;
  readonly problems: readonly Problem[];
}

export async function renderFiles({ plan, view, sheets, problems }: Planned): Promise<OutputFile[]> {
  const reorder = viewReorder(plan);
  const contents: Readonly<Record<(typeof outputNames)[number], OutputFile['content']>> = {
    'report.html': await renderReport(view),
    'shop.html': await renderShop(plan),
    'bench.html': await renderBench(plan),
    'reorder.csv': writeReorderCsv(reorder),
    'reorder.xlsx': await writeReorderWorkbook(reorder),
    'estimate.xlsx': await writeEstimateWorkbook(viewEstimate(plan, sheets)),
    'plan.json': writePlanJson(describePlan(plan, problems)),
  };
  return outputNames.map((name) => ({ name, content: contents[name] }));
}

/**
 * Loads the heavy libraries, but only when the planning first waits for the solver: whatever comes before that keeps the
 * solver waiting. A plan that never waits loads them when they are used, and one that can't be loaded says so then.
 */
export function loadWriters(): void {
  setImmediate(() => {
    for (const load of [loadWorkbookLibrary, loadPageLibrary]) load().catch(() => undefined);
  });
}
