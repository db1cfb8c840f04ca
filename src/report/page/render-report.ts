// Report front: joins charts and templates. In: a ReportView, or a plan for the small pages. Out: one self-contained HTML file as text.
import type { Plan } from '../../model/plan.js';
import { drawDab, drawLid, drawSpread, drawSwatch } from '../drawing/draw-dab.js';
import { drawOver, drawPair } from '../drawing/draw-over.js';
import { drawShapes } from '../drawing/draw-shapes.js';
import { drawShareBar } from '../drawing/draw-share-bar.js';
import { viewReorder } from '../reorder/view-reorder.js';
import { viewBench } from '../sections/bench/view.js';
import { drawCostBar, drawPiece } from '../sections/costs/draw.js';
import { drawPotAxis, drawPotBar } from '../sections/pots/draw.js';
import { drawDoneBar } from '../sections/progress/draw.js';
import { viewShop } from '../sections/shop/view.js';
import { drawStairs } from '../sections/stairs/draw.js';
import { drawEvening } from '../sections/time/draw.js';
import { drawUseBar } from '../sections/use/draw.js';
import { viewInputs } from '../words/view-inputs.js';
import { drawPalette } from './draw-palette.js';
import { fillTemplates } from './fill-templates.js';
import type { ReportView } from './view.js';

/** The report: no network, no other file, and nothing that needs its script. Throws only where a template is missing or broken. */
export function renderReport(view: ReportView): Promise<string> {
  return fillTemplates('report', view, {
    drawShapes,
    drawPalette,
    drawPotBar,
    drawPotAxis,
    drawCostBar,
    drawPiece,
    drawDoneBar,
    drawShareBar,
    drawStairs,
    drawOver,
    drawPair,
    drawEvening,
    drawUseBar,
    drawDab,
    drawSwatch,
    drawSpread,
  });
}

/** The list to buy, to take along: as self-contained as the report. */
export const renderShop = (plan: Plan): Promise<string> =>
  fillTemplates('shop', viewShop(viewInputs(plan), viewReorder(plan)), { drawLid });

/** The cards for the bench, another. */
export const renderBench = (plan: Plan): Promise<string> =>
  fillTemplates('bench', viewBench(viewInputs(plan)), { drawLid });
