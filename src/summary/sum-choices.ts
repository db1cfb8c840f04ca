// Summary: ways to buy beside one another. In: the choices, which of them is the order's. Out: sums, and what waits.
import type { Aim, Choice, Needed } from '../model/choices.js';
import type { Order, OrderLine } from '../model/order.js';
import type { BuyingSums, ChoiceSums } from '../model/order-sums.js';

interface Inputs {
  readonly aim: Aim;
  readonly choices: readonly Choice[];
  readonly order: Pick<Order, 'lines'>;
}

/** Hardly ever needed is what is under 1 %. */
const leastChance = 0.005;

export function sumChoices({ aim, choices, order }: Inputs): BuyingSums {
  const isAim = ({ policy, surePercent }: Choice): boolean =>
    policy === aim.policy && surePercent === aim.surePercent;
  const chosen = choices.find(isAim);
  const goes = choices.find(({ policy }) => policy === 'goes');
  return {
    chosen,
    goes: goes === chosen ? undefined : goes,
    sums: new Map(choices.map((choice) => [choice, sumChoice(choice)])),
    lists: groupAlike(choices),
    needed: new Map(order.lines.flatMap((line) => neededOf(line, chosen))),
    mostMinor: Math.max(0, ...choices.map(({ cashNowMinor }) => cashNowMinor)),
    isFree: choices.every(({ cashNowMinor }) => cashNowMinor === 0),
  };
}

function groupAlike(choices: readonly Choice[]): BuyingSums['lists'] {
  const groups = new Map<string, [Choice, ...Choice[]]>();
  for (const choice of choices) {
    const key = choice.lines.map(({ shop, offer, count }) => `${shop}\n${offer}\n${count}`).join('\n');
    const known = groups.get(key);
    if (known !== undefined) known.push(choice);
    else if (choice.lines.length > 0) groups.set(key, [choice]);
  }
  return [...groups.values()];
}

function neededOf(line: OrderLine, chosen: Choice | undefined): [OrderLine, Needed][] {
  const own = chosen?.lines.find(({ shop, offer }) => shop === line.shop && offer === line.offer);
  return own === undefined ? [] : [[line, own]];
}

const sumChoice = ({ bills, waiting }: Choice): ChoiceSums => ({
  postageMinor: bills.reduce((sum, { postageMinor }) => sum + postageMinor, 0),
  waits: waiting.filter(({ chanceNeeded }) => chanceNeeded.chance >= leastChance),
});
