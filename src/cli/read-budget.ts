// Command line: --budget, --seconds, --sure, --buy. In: their texts. Out: minor units, seconds, percent, a word.
import { Mistake } from '../sheets/check/read-cell/cell-kind.js';
import { priceKind } from '../sheets/check/read-cell/read-price.js';
import { UsageError } from './end-run.js';
import type { Sheets } from './read-or-show.js';

/** A sum in the currency of the settings, as prices are written there; 0 finishes what needs nothing bought. */
export function readBudget(text: string, { currency, locale }: Sheets['settings']): number {
  const minor = priceKind({ currency, locale }).read(text);
  if (minor instanceof Mistake || minor === undefined)
    throw new UsageError(`"${text}" is not a sum in ${currency}. Write --budget as 60 or 59.50.`);
  return minor;
}

const mostSeconds = 3600;

/** Whole or broken seconds, above 0 and up to an hour. */
export function readSeconds(text: string): number {
  const seconds = /^\d+(\.\d+)?$/.test(text) ? Number(text) : 0;
  if (seconds <= 0 || seconds > mostSeconds)
    throw new UsageError(`"${text}" is not a time to search. Write --seconds as 10; at most ${mostSeconds}.`);
  return seconds;
}

/** Per cent from 50 to 99, whole or broken. */
export function readSure(text: string): number {
  const percent = /^\d+(\.\d+)?%?$/.test(text) ? Number.parseFloat(text) : 0;
  if (percent < 50 || percent > 99)
    throw new UsageError(`"${text}" is not how sure an order can be. Write --sure as 80; 50 to 99 per cent.`);
  return percent;
}

/** One of the words that the setting `buy` knows. */
export function readBuy(text: string): 'likely' | 'goes' {
  if (text === 'likely' || text === 'goes') return text;
  throw new UsageError(`"${text}" is not a way to buy. Write --buy as likely or goes.`);
}
