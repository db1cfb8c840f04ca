// Small jobs for tests of the time stage, and ways to schedule them that share no code with it.
import { overrideAssumptions } from '../../src/assumptions/override-assumptions.js';
import { registry } from '../../src/assumptions/registry.js';
import type { Assumptions } from '../../src/model/assumption.js';
import type { Pass } from '../../src/model/time.js';

/** The registry with some likely values replaced. */
export const withValues = (values: Readonly<Record<string, number>>): Assumptions =>
  overrideAssumptions(
    registry,
    Object.entries(values).map(([name, likely]) => ({ name, likely, low: likely, high: likely })),
  );

/** Round numbers: 10 cm2 take 2 minutes a coat by brush and 0.2 by can; no zone is large. */
export const roundNumbers = withValues({
  'brush pace': 0.1,
  'brush handling': 1,
  'brush setup': 1,
  'wider brush from': 1000,
  'spray can pace': 0.01,
  'spray can handling': 0.1,
  'spray can setup': 5,
});

export const makePass = (pass: Partial<Pass> = {}): Pass => ({
  step: 1,
  layer: 'base coat',
  coat: 1,
  spray: false,
  zones: ['whole'],
  paints: ['Slate'],
  palette: 'brush\nSlate',
  figures: 10,
  brushMinPerFigure: 2,
  setupMin: 0,
  driesMin: 5,
  ...pass,
});

/** One round over the first so many figures: p minutes a figure, d minutes to dry, s minutes of setup. */
export interface PlainRound {
  readonly n: number;
  readonly p: number;
  readonly d: number;
  readonly s: number;
}

export const asRound = ({ n, p, d, s }: PlainRound) => ({
  figures: n,
  brushMinPerFigure: p,
  driesMin: d,
  setupMin: s,
});

/** Step by step, figure by figure: when the last stroke ends. */
export function walkStepByStep(rounds: readonly PlainRound[]): number {
  const dry: number[] = [];
  let now = 0;
  for (const { n, p, d, s } of rounds) {
    now += s;
    for (let figure = 0; figure < n; figure++) {
      now = Math.max(now, dry[figure] ?? 0) + p;
      dry[figure] = now + d;
    }
  }
  return now;
}

/** The shortest of all orders of work without setups, by trying every one: for very few figures and rounds. */
export function tryEveryOrder(rounds: readonly PlainRound[]): number {
  const figures = Math.max(0, ...rounds.map(({ n }) => n));
  const waysOf = Array.from({ length: figures }, (_, figure) => rounds.filter(({ n }) => n > figure));
  const search = (now: number, state: readonly { readonly next: number; readonly dry: number }[]): number => {
    let best = Number.POSITIVE_INFINITY;
    for (const [figure, { next, dry }] of state.entries()) {
      const round = waysOf[figure]?.[next];
      if (round === undefined) continue;
      const end = Math.max(now, dry) + round.p;
      const after = state.map((one, index) =>
        index === figure ? { next: next + 1, dry: end + round.d } : one,
      );
      best = Math.min(best, search(end, after));
    }
    return best === Number.POSITIVE_INFINITY ? now : best;
  };
  return search(
    0,
    waysOf.map(() => ({ next: 0, dry: 0 })),
  );
}
