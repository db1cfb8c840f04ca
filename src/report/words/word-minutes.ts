// Report view: how long, in plain words. In: minutes. Out: text, rounded once to whole minutes.
import type { MinuteRange } from '../../model/time.js';
import type { NumberWords } from './word-numbers.js';
import { sharedWords } from './words.js';

/** Up to so many minutes are said in minutes alone. */
const mostMinutes = 100;

const space = '\u00a0';

/** `19 min`, `7 h 30 min`, `12 h`; a trace is `under 1 min`. Never negative. */
export function wordMinutes(minutes: number, words: NumberWords): string {
  const whole = Math.round(minutes);
  if (whole === 0) return minutes > 0 ? sharedWords.under(inMinutes(1, words)) : inMinutes(0, words);
  if (whole < mostMinutes) return inMinutes(whole, words);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  const inHours = `${words.count(hours)}${space}h`;
  return rest === 0 ? inHours : `${inHours} ${inMinutes(rest, words)}`;
}

/** `7 h 30 min less`; `the same` where that would be none. */
export function wordMoreMinutes(more: number, words: NumberWords): string {
  if (Math.abs(more) < 0.5) return sharedWords.same;
  const { more: longer, less: shorter } = sharedWords;
  return (more > 0 ? longer : shorter)(wordMinutes(Math.abs(more), words));
}

const inMinutes = (whole: number, words: NumberWords): string => `${words.count(whole)}${space}min`;

/** `26 to 42 min`, `51 h 57 min to 80 h 56 min`; one text where both round to the same. */
export function wordMinuteRange({ low, high }: MinuteRange, words: NumberWords): string {
  const [from, to] = [wordMinutes(low, words), wordMinutes(high, words)];
  if (from === to) return to;
  const bare = Math.round(low) > 0 && Math.round(high) < mostMinutes;
  return sharedWords.range(bare ? words.count(Math.round(low)) : from, to);
}
