// Ranges: how often an order is enough. In: the army's draws and others, the order, ways to buy. Out: the same in figures.
import type { Aim, Choice } from '../model/choices.js';
import type { DrawnLack } from '../model/draws.js';
import type { Order } from '../model/order.js';
import type { Promised } from '../model/ranges.js';
import { chanceMet } from './fill-shelf.js';

export interface PromiseInputs {
  readonly aim: Aim;
  readonly order: Pick<Order, 'lines'>;
  readonly choices: readonly Choice[];
  /** The draws that the order is made from. */
  readonly drawn: DrawnLack;
  /** Others, to check it on. */
  readonly fresh: DrawnLack;
  readonly canBuy: (paint: string) => boolean;
}

/** With the promises that stand beside it. */
export function sumUpPromise({ aim, order, choices, drawn, fresh, canBuy }: PromiseInputs): Promised {
  const likely = choices.find(({ policy }) => policy === 'likely');
  return {
    surePercent: aim.surePercent,
    met: chanceMet(drawn, order),
    metOnFreshDraws: chanceMet(fresh, order),
    metOfOffered: chanceMet(onlyPaints(fresh, canBuy), order),
    likely: { cashMinor: likely?.cashNowMinor ?? 0, met: likely?.met ?? chanceMet(fresh, { lines: [] }) },
    levels: choices.flatMap(({ surePercent, cashNowMinor, met, aboveBestMinor }) =>
      surePercent === undefined
        ? []
        : [{ surePercent, cashMinor: cashNowMinor, met, proved: aboveBestMinor === 0 }],
    ),
  };
}

/** The army as if it needed only such paints. */
export function onlyPaints(drawn: DrawnLack, isMeant: (paint: string) => boolean): DrawnLack {
  return { ...drawn, paints: drawn.paints.filter(({ paint }) => isMeant(paint)) };
}
