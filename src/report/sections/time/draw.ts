// Charts: an evening as a bar. In: an EveningBar. Out: SVG; a piece's look follows its layer. The row names number, minutes
// and each piece, so readers skip it.
import { drawPieces, wide } from '../../drawing/draw-pieces.js';
import type { EveningBar } from './view-evenings.js';

/** The frame is the whole evening; pieces stand in the order in which they are painted. */
export const drawEvening = ({ pieces }: EveningBar): string =>
  `<svg class="evening-bar" height="18" viewBox="0 0 ${wide} 18" preserveAspectRatio="none" aria-hidden="true">${drawPieces(pieces, 1)}</svg>`;
