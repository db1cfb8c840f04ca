// Policy: what should stand on the shelf before each stage of the work. In: needs by stage over draws. Out: ml by stage.
import { at } from '../../model/at.js';
import type { GainOf, StagedPaint, StagedWork } from '../../model/draws.js';
import { quantileOf, quantileOfRising } from '../../model/quantiles.js';
import type { Container } from '../../model/words.js';

/** Ml wanted before each stage, and 0 after the last; in the order of the paints. */
export type Wants = readonly Float64Array[];

/** What the next stages take in so many draws is always bought. */
const next = { stages: 2, quantile: 0.8 };

/** How a policy wants its shelf: asked once for each policy, of work that is laid out once. */
export interface OpenWants {
  /** What is likely still to be put out. */
  likely(): Wants;
  /** The quantile, 0 to 1, of what is still to be put out; for buying in goes no less than what the next stages take. */
  at(shareOf: (paint: string) => number, withNext: boolean): Wants;
  /** What the next stages take beyond today's shelf, by paint; below 0: so much more is there. */
  nextMissing(): Map<string, number>;
}

/** In likely ml of pots: each draw's need over what a ml of a pot gives there. */
export function openWants(
  { paints, gainOf }: StagedWork,
  containersOf: ReadonlyMap<string, ReadonlySet<Container>>,
): OpenWants {
  const laid = paints.map((one) => layOut(one, gainFor(containersOf.get(one.paint), gainOf)));
  const wantsBy = (want: (place: number, stage: number) => number): Wants =>
    paints.map(({ needMl }, place) =>
      Float64Array.from({ length: needMl.length + 1 }, (_, stage) =>
        stage === needMl.length ? 0 : want(place, stage),
      ),
    );
  const laidAt = (place: number): LaidOut => laid[place] as LaidOut;
  return {
    likely: () =>
      wantsBy((place, stage) =>
        at(paints, place)
          .likelyMl.slice(stage)
          .reduce((sum, ml) => sum + ml, 0),
      ),
    at: (shareOf, withNext) =>
      wantsBy((place, stage) => {
        const { rest, soon } = laidAt(place);
        const all = quantileOfRising(rest[stage] as Float64Array, shareOf(at(paints, place).paint));
        return withNext ? Math.max(all, soon[stage] ?? 0) : all;
      }),
    nextMissing: () => new Map(paints.map(({ paint }, place) => [paint, laidAt(place).missing])),
  };
}

interface LaidOut {
  /** From each stage to the end, over the draws in rising order. */
  readonly rest: readonly Float64Array[];
  /** Of each stage and the next, in so many draws. */
  readonly soon: readonly number[];
  /** Of the first stages, less the shelf, in so many draws. */
  readonly missing: number;
}

/** The largest gain of any container on offer: as in the promise, what is wanted is what is needed at the least. */
function gainFor(containers: ReadonlySet<Container> | undefined, gainOf: GainOf): (draw: number) => number {
  const gains = [...(containers ?? [])].map(gainOf);
  if (gains.every((gain) => gain === undefined)) return () => 1;
  return (draw) => Math.max(...gains.map((gain) => gain?.[draw] ?? 1));
}

function layOut({ needMl, haveMl }: StagedPaint, gainAt: (draw: number) => number): LaidOut {
  const sumOf = (from: number, to: number): Float64Array => {
    const sum = new Float64Array(haveMl.length);
    for (const need of needMl.slice(from, to))
      for (let draw = 0; draw < sum.length; draw++)
        sum[draw] = (sum[draw] as number) + (need[draw] as number);
    return sum;
  };
  const over = (ml: Float64Array): Float64Array => ml.map((one, draw) => one / gainAt(draw));
  const mostly = (ml: Float64Array): number => quantileOf(over(ml), next.quantile);
  return {
    rest: needMl.map((_, stage) => over(sumOf(stage, needMl.length)).sort()),
    soon: needMl.map((_, stage) => mostly(sumOf(stage, stage + next.stages))),
    missing: mostly(sumOf(0, next.stages).map((ml, draw) => ml - (haveMl[draw] as number))),
  };
}
