// Report words: an army that needs no paint. In: what it puts out. Out: a sentence.
import type { PutOut } from '../../model/summary.js';
import { sharedWords } from './words.js';

/** Whether all of its work is done, or there never was any. */
export const wordNoNeed = ({ wholeMl }: PutOut): string =>
  wholeMl > 0 ? sharedWords.nothingLeft : sharedWords.nothingNeeded;
