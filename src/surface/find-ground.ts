// Surface: which way up a model stands. In: its corners. Out: the axis that points up, its height, and where its ground is.

/** Places among x, y, z. */
export type Axis = 0 | 1 | 2;

export interface Ground {
  readonly up: Axis;
  /** The lowest place along `up`, and up to where a corner counts as lying on it. */
  readonly from: number;
  readonly to: number;
  /** Extent along x, y, z. */
  readonly sizes: readonly [number, number, number];
}

/** Of the height: what lies so near to the lowest place lies on the ground. */
const nearness = 5e-4;
/** Of the rectangle around the model: by so much more of it must lie flat on the ground that y points up. */
const clearly = 0.02;

/**
 * z points up, as in files for printing. Where the format leaves it open, y does if the model lies on more of its ground
 * that way.
 */
export function findGround(corners: Float32Array, mayBeY: boolean): Ground {
  const { low, sizes } = boundsOf(corners);
  const groundOf = (up: Axis): Ground => {
    const from = low[up];
    return { up, from, to: from + nearness * sizes[up], sizes };
  };
  const [z, y] = [groundOf(2), groundOf(1)];
  return mayBeY && flatShare(corners, y) > flatShare(corners, z) + clearly ? y : z;
}

function boundsOf(corners: Float32Array) {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let at = 0; at < corners.length; at += 3) {
    for (let k = 0 as Axis; k < 3; k += 1) {
      const value = corners[at + k] as number;
      if (value < low[k]) low[k] = value;
      if (value > high[k]) high[k] = value;
    }
  }
  const sizes = [high[0] - low[0], high[1] - low[1], high[2] - low[2]] as const;
  return { low, sizes };
}

/** Whether all corners of the triangle whose numbers begin at `at` lie on the ground. */
export function liesOnGround(corners: Float32Array, at: number, { up, to }: Ground): boolean {
  return (
    (corners[at + up] as number) <= to &&
    (corners[at + 3 + up] as number) <= to &&
    (corners[at + 6 + up] as number) <= to
  );
}

/** How much of the rectangle around the model its ground covers; over 1 where sheets lie on one another. */
function flatShare(corners: Float32Array, ground: Ground): number {
  const [a, b] = ([0, 1, 2] as const).filter((axis) => axis !== ground.up) as [Axis, Axis];
  let doubled = 0;
  for (let at = 0; at < corners.length; at += 9) {
    if (!liesOnGround(corners, at, ground)) continue;
    const [ax, ay] = [
      (corners[at + 3 + a] as number) - (corners[at + a] as number),
      (corners[at + 3 + b] as number) - (corners[at + b] as number),
    ];
    const [bx, by] = [
      (corners[at + 6 + a] as number) - (corners[at + a] as number),
      (corners[at + 6 + b] as number) - (corners[at + b] as number),
    ];
    doubled += Math.abs(ax * by - ay * bx);
  }
  const around = ground.sizes[a] * ground.sizes[b];
  return around === 0 ? 0 : doubled / 2 / around;
}
