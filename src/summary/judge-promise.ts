// Summary: how the promise stands. In: what was promised, the order. Out: whether it is kept.
import type { Order } from '../model/order.js';
import type { PromiseSums, Standing } from '../model/order-sums.js';
import type { Promised, PromiseLevel } from '../model/ranges.js';
import { reaches } from '../model/summary.js';

interface Inputs {
  readonly promised: Promised;
  readonly order: Order;
}

export function judgePromise({ promised, order }: Inputs): PromiseSums {
  const { metOfOffered, metOnFreshDraws } = promised;
  const standing = standingOf({ promised, order });
  return {
    standing,
    reached: standing === 'apart' ? metOfOffered : metOnFreshDraws,
    isHeldBack: metOfOffered.chance - metOnFreshDraws.chance > sameShare,
    surer: surerLevel(promised),
  };
}

/** Shares nearer to each other than this read alike. */
const sameShare = 0.0005;

function standingOf({ promised, order }: Inputs): Standing {
  const { surePercent, metOnFreshDraws, metOfOffered } = promised;
  if (reaches(metOnFreshDraws, surePercent)) return 'kept';
  if (order.lines.length === 0 && order.unmet.length > 0) return 'not sold';
  return reaches(metOfOffered, surePercent) ? 'apart' : 'missed';
}

function surerLevel({ levels, metOfOffered }: Promised): PromiseLevel | undefined {
  const [surest] = [...levels].sort((a, b) => b.met.chance - a.met.chance);
  return surest === undefined || surest.met.chance <= metOfOffered.chance ? undefined : surest;
}
