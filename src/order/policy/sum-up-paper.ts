// Policy: what the painted draws say. In: them. Out: means and quantiles with their errors, and the next order.
import { at } from '../../model/at.js';
import type { Follows, NextOrder, Sampled } from '../../model/choices.js';
import { chanceOf, quantileOf } from '../../model/quantiles.js';
import type { Painted } from './paint-on-paper.js';

/** Units by stage. */
export function sumUpPaper(painted: readonly Painted[], units: readonly string[]): Follows {
  const cash = columnOf(painted, ({ cashMinor }) => cashMinor);
  return {
    draws: painted.length,
    ordersAfter: meanOf(columnOf(painted, ({ orders }) => orders)),
    meanInAllMinor: meanOf(cash),
    highInAllMinor: highOf(cash),
    leftOverMinor: meanOf(columnOf(painted, ({ leftOverMinor }) => leftOverMinor)),
    atLeast: painted.some(({ isLacking }) => isLacking),
    next: nextOf(painted, units),
  };
}

const columnOf = (painted: readonly Painted[], of: (one: Painted) => number): Float64Array =>
  Float64Array.from(painted, of);

/** The mean and its standard error, `s / sqrt(n)`. */
export function meanOf(values: Float64Array): Sampled {
  const count = values.length;
  if (count === 0) return { value: 0, error: 0 };
  const value = values.reduce((sum, one) => sum + one, 0) / count;
  const squares = values.reduce((sum, one) => sum + (one - value) ** 2, 0);
  return { value, error: count === 1 ? 0 : Math.sqrt(squares / (count - 1) / count) };
}

/**
 * P90, and as its error half of what lies between the quantiles one standard error of the share on either side: their ranks are
 * binomial, whatever the values are. Source: David & Nagaraja, Order Statistics, section 7.1 (from memory).
 */
export function highOf(values: Float64Array): Sampled {
  const share = 0.9;
  const apart = values.length === 0 ? 0 : Math.sqrt((share * (1 - share)) / values.length);
  const [low, high] = [quantileOf(values, share - apart), quantileOf(values, Math.min(1, share + apart))];
  return { value: quantileOf(values, share), error: (high - low) / 2 };
}

function nextOf(painted: readonly Painted[], units: readonly string[]): NextOrder | undefined {
  const orders = painted.flatMap(({ next }) => (next === undefined ? [] : [next]));
  if (orders.length === 0) return undefined;
  const times = units.map((_, stage) => orders.filter((order) => order.stage === stage).length);
  const most = times.indexOf(Math.max(...times));
  return {
    chance: chanceOf(orders.length, painted.length),
    unit: at(units, most),
    chanceThere: chanceOf(at(times, most), painted.length),
    cashMinor: meanOf(Float64Array.from(orders, ({ cashMinor }) => cashMinor)),
  };
}
