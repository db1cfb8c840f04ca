// Policy: which way to buy the settings ask for. In: settings. Out: the aim.
import type { Aim } from '../../model/choices.js';
import type { Settings } from '../../model/sheets.js';

/** A promise where one is asked for; else what `buy` says, and in goes where it says nothing. */
export function aimOf({ surePercent, buy = 'goes' }: Pick<Settings, 'surePercent' | 'buy'>): Aim {
  return surePercent === undefined ? { policy: buy } : { policy: 'sure', surePercent };
}
