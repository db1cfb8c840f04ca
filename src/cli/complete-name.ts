// Command line: names that are not typed to the end. In: what was typed, the names that there are. Out: the one that is meant.
import { joinOr } from '../sheets/check/find-nearest.js';
import { foldName } from '../sheets/check/fold-name.js';
import { UsageError } from './end-run.js';

const mostShown = 5;

/**
 * The name itself, else the only one that begins so, or whose words begin so one after the other: `upper g` is Upper Gate
 * Watch. What begins none comes back as it is, and the sheets' own check says so. Throws a UsageError where several begin so.
 */
export function completeName(typed: string, names: Iterable<string>): string {
  const wanted = foldName(typed);
  const all = [...new Set(names)];
  if (wanted === '' || all.some((name) => foldName(name) === wanted)) return typed;
  const begins = all.filter((name) => foldName(name).startsWith(wanted));
  const near = begins.length > 0 ? begins : all.filter((name) => beginWords(foldName(name), wanted));
  const [only] = near;
  if (only === undefined) return typed;
  if (near.length === 1) return only;
  const shown = near.length > mostShown ? [...near.slice(0, mostShown), 'another'] : near;
  throw new UsageError(`"${typed}" could be ${joinOr(shown)}. Write more of it.`);
}

/** Each word typed begins a word of the name, in their order. */
function beginWords(name: string, typed: string): boolean {
  const words = name.split(' ');
  let at = 0;
  return typed.split(' ').every((word) => {
    const found = words.findIndex((other, place) => place >= at && other.startsWith(word));
    at = found + 1;
    return found >= 0;
  });
}
