// Report front: joins charts and templates. In: a ReportView. Out: one self-contained HTML file as text.
import { drawCostBar, drawPiece } from './charts/draw-cost-bar.js';
import { drawDab, drawSpread, drawSwatch } from './charts/draw-dab.js';
import { drawDoneBar } from './charts/draw-done-bar.js';
import { drawEvening } from './charts/draw-evening.js';
import { drawFrontier } from './charts/draw-frontier.js';
import { drawOver, drawPair } from './charts/draw-over.js';
import { drawPalette } from './charts/draw-palette.js';
import { drawPotAxis, drawPotBar } from './charts/draw-pot-bar.js';
import { drawShapes } from './charts/draw-shapes.js';
import { drawShareBar } from './charts/draw-share-bar.js';
import { drawStairs } from './charts/draw-stairs.js';
import { drawUseBar } from './charts/draw-use-bar.js';
import { fillTemplates } from './html/fill-templates.js';
import type { ReportView } from './view/report-view.js';

/** The report: no network, no other file, and nothing that needs its script. Throws only where a template is missing or broken. */
export function renderReport(view: ReportView): Promise<string> {
  return fillTemplates(view, {
    drawShapes,
    drawPalette,
    drawPotBar,
    drawPotAxis,
    drawCostBar,
    drawPiece,
    drawDoneBar,
    drawShareBar,
    drawStairs,
    drawFrontier,
    drawOver,
    drawPair,
    drawEvening,
    drawUseBar,
    drawDab,
    drawSwatch,
    drawSpread,
  });
}
