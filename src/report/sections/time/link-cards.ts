// Report view: from an evening to the cards for the bench. In: the cards. Out: the place of a piece on them.
import type { BenchSums } from '../../../model/bench.js';
import type { EveningPiece } from '../../../model/time.js';
import { cardPlace, stepPlace } from '../../words/card-place.js';

/**
 * Its step on the card of its unit's next batch; the card alone where that batch is past the step; '' where there is no card. Of units
 * of one name the first whose card has the step.
 */
export function linkCard(piece: EveningPiece, { cards }: BenchSums): string {
  if (piece.what === 'waiting') return '';
  const { step } = piece.pass;
  const own = cards.filter(({ unit }) => unit.unit === piece.unit);
  const withStep = own.find(({ bench }) => bench.steps.some((one) => one.step === step));
  if (withStep !== undefined) return stepPlace(withStep.no, step);
  return own[0] === undefined ? '' : cardPlace(own[0].no);
}
