// Bench: which steps share a card. In: the steps of a batch, worded. Out: the same in groups that fit on A6.
import type { StepView } from './view-step.js';

/** Letters of a printed line; of a name before it is cut, and what it then takes, since it stands in one piece. */
const [lineLetters, nameLetters, cutLetters] = [74, 22, 40];
/** Millimetres of a line, of the gap between steps, and of all steps of a card. */
const [lineMm, gapMm, cardMm] = [2.9, 0.9, 109];

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

const nameWidth = ({ length }: string): number => (length > nameLetters ? cutLetters : length);

const countLetters = ({ zone, layer, paints, coats, dries }: StepView): number =>
  paints.reduce(
    (letters, { paint, amount, isSwap }) => letters + nameWidth(paint) + amount.length + (isSwap ? 14 : 7),
    nameWidth(zone) + layer.length + coats.length + dries.length + 8,
  );
