// Command line: what stands on the shelf once something was written. In: the stock, the paints it was about. Out: a line each.
import { stdout } from 'node:process';
import type { takeShelfNow } from '../plan-army.js';
import { showPlain } from './show-plain.js';
import { countOf } from './show-problems.js';

type Stock = Awaited<ReturnType<typeof takeShelfNow>>[number];

/** `  brick red: about 6.4 ml in 1 pot, 16 ml on the way in 1` */
export function tellShelf(stock: readonly Stock[], paints: ReadonlySet<string>): void {
  const lines = stock.filter(({ paint }) => paints.has(paint)).map(lineOf);
  if (lines.length > 0) stdout.write(`On the shelf now, usable:\n${lines.join('')}`);
}

function lineOf({ paint, pots, haveMl, orderedMl, unmeasured }: Stock): string {
  const coming = pots.filter(({ ordered }) => ordered).length;
  const there = pots.length - coming;
  const about = unmeasured === undefined ? '' : 'about ';
  const here = there === 0 ? 'none' : `${about}${inMl(haveMl - orderedMl)} in ${countOf(there, 'pot')}`;
  const onWay = coming === 0 ? '' : `, ${inMl(orderedMl)} on the way in ${coming}`;
  return `  ${showPlain(paint)}: ${here}${onWay}\n`;
}

export const inMl = (ml: number): string => `${Math.round(ml * 10) / 10} ml`;
