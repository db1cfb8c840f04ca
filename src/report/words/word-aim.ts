// Report view: for which way to buy the order is made. In: the plan's aim. Out: it in words.
import type { Plan } from '../../model/plan.js';
import type { NumberWords } from './word-numbers.js';

/** As the subject of a sentence: `80% sure`, `buying in goes`, `buying what is likely`. */
export function wordAim({ aim }: Pick<Plan, 'aim'>, words: NumberWords): string {
  if (aim.surePercent !== undefined) return `${words.sure(aim.surePercent)} sure`;
  return aim.policy === 'likely' ? 'buying what is likely' : 'buying in goes';
}

/** What that means, for the list to buy. */
export function wordList({ aim }: Pick<Plan, 'aim'>, words: NumberWords): string {
  if (aim.surePercent !== undefined)
    return `What it takes beyond your shelf to be ${words.sure(aim.surePercent)} sure that nothing runs out. What is likely takes less, so some of it will likely be left.`;
  const again = 'When a pot runs dry, order again.';
  return aim.policy === 'likely'
    ? `What your likely needs take beyond your shelf. ${again}`
    : `Each pot that is likely enough to be needed to be worth its price, and what the next two units take. ${again}`;
}
