// Start: what the sets leave of one need, in pots of that paint alone. In: the rest, pots. Out: which, and what each shop takes for them.
import { at } from '../../model/at.js';
import { choosePots, type Pack } from '../choose-pots.js';

/** Volumes are whole picolitres here: what is added and taken off again leaves no trace of rounding. */
export const plPerMl = 1e9;

export interface PlacedPack extends Pack {
  /** Its place among the wares. */
  readonly column: number;
  readonly till: number;
}

/** The cheapest pots for a rest: how many of each pack, and what goes into which till. */
export interface Filling {
  readonly counts: readonly number[];
  readonly takings: readonly (readonly [till: number, minor: number])[];
}

/** The fillings of one need, each looked for once; where its pots do not reach, a fine. */
export class FillUp {
  readonly packs: readonly PlacedPack[];
  readonly #fine: Filling['takings'];
  readonly #known = new Map<number, Filling>();

  constructor(packs: readonly PlacedPack[], fine: Filling['takings']) {
    this.packs = packs;
    this.#fine = fine;
  }

  /** How many were looked for. */
  get looked(): number {
    return this.#known.size;
  }

  find(restPl: number): Filling {
    const rest = Math.max(0, restPl);
    const known = this.#known.get(rest) ?? this.#choose(rest / plPerMl);
    this.#known.set(rest, known);
    return known;
  }

  #choose(ml: number): Filling {
    const counts = choosePots(ml, this.packs);
    if (counts === undefined) return { counts: [], takings: this.#fine };
    const takings = new Map<number, number>();
    for (const [place, { till, priceMinor }] of this.packs.entries()) {
      const minor = at(counts, place) * priceMinor;
      if (minor > 0) takings.set(till, minor + (takings.get(till) ?? 0));
    }
    return { counts, takings: [...takings] };
  }
}
