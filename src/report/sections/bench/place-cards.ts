// Bench: which steps share a card. In: the steps of a batch, worded. Out: the same in groups that fit on A6.
import type { StepView } from './view-step.js';

/** Letters of a printed line, and of a name before it is cut; millimetres of a line, between steps, and for all steps of a card. */
const [lineLetters, nameLetters] = [74, 24];
const [lineMm, gapMm, cardMm] = [2.9, 1.2, 112];

/** In order. As many as fit by their letters, each of the usual width. */
export function placeCards<Step extends StepView>(steps: readonly Step[]): Step[][] {
  const cards: Step[][] = [];
  let usedMm = cardMm;
  for (const step of steps) {
    const highMm = gapMm + lineMm * Math.ceil(countLetters(step) / lineLetters);
    if (usedMm + highMm > cardMm) {
      cards.push([]);
      usedMm = 0;
    }
    cards.at(-1)?.push(step);
    usedMm += highMm;
  }
  return cards;
}

const nameWidth = (name: string): number => Math.min(nameLetters, name.length);

const countLetters = ({ zone, layer, paints, coats, dries }: StepView): number =>
  paints.reduce(
    (letters, { paint, amount, isSwap }) => letters + nameWidth(paint) + amount.length + (isSwap ? 14 : 7),
    nameWidth(zone) + layer.length + coats.length + dries.length + 8,
  );
