// Bench: which steps share a card. In: the steps of a batch, worded. Out: the same in groups that fit on A6, about alike in height.
import { at } from '../../../model/at.js';
import type { StepView } from './view-step.js';

/** Letters of a printed line; of a name before it is cut, and what it then takes, since it stands in one piece. */
const [lineLetters, nameLetters, cutLetters] = [74, 22, 40];
/** Millimetres of a line, of the gap between steps, and of all steps of a card. */
const [lineMm, gapMm, cardMm] = [2.9, 0.9, 109];

/** In order, on as few cards as their letters allow, each of the usual width; the fullest is as low as it can be, within a line. */
export function placeCards<Step extends StepView>(steps: readonly Step[]): Step[][] {
  const blocks = listBlocks(steps);
  const fewest = fillCards(blocks, cardMm);
  let highMm = blocks.reduce((sum, block) => sum + heightOf(block), 0) / fewest.length;
  while (highMm < cardMm) {
    const cards = fillCards(blocks, highMm);
    if (cards.length <= fewest.length) return cards;
    highMm += lineMm;
  }
  return fewest;
}

/** Rows of one step stay together, unless no card holds them. */
function listBlocks<Step extends StepView>(steps: readonly Step[]): Step[][] {
  const blocks: Step[][] = [];
  for (const step of steps) {
    const last = blocks.at(-1);
    if (last !== undefined && at(last, 0).no === step.no) last.push(step);
    else blocks.push([step]);
  }
  return blocks.flatMap((block) => (heightOf(block) > cardMm ? block.map((step) => [step]) : [block]));
}

/** A block that is higher stands alone. */
function fillCards<Step extends StepView>(blocks: readonly Step[][], highMm: number): Step[][] {
  const cards: Step[][] = [];
  let usedMm = highMm;
  for (const block of blocks) {
    const blockMm = heightOf(block);
    if (usedMm + blockMm > highMm) {
      cards.push([]);
      usedMm = 0;
    }
    cards.at(-1)?.push(...block);
    usedMm += blockMm;
  }
  return cards;
}

const heightOf = (steps: readonly StepView[]): number =>
  steps.reduce((sum, step) => sum + gapMm + lineMm * Math.ceil(countLetters(step) / lineLetters), 0);

const nameWidth = ({ length }: string): number => (length > nameLetters ? cutLetters : length);

const countLetters = ({ zone, layer, paints, coats, dries }: StepView): number =>
  paints.reduce(
    (letters, { paint, amount, isSwap }) => letters + nameWidth(paint) + amount.length + (isSwap ? 14 : 7),
    nameWidth(zone) + layer.length + coats.length + dries.length + 8,
  );
