// Surface: triangles in an order in which neighbours in space are neighbours in the list (Morton 1966). In: corners. Out: the order.

const CELLS = 1024;

export interface Sorted {
  /** Triangles by their place in `corners`. */
  readonly order: Uint32Array;
  /** Of each triangle of the mesh: the bits of its cell along x, y, z interleaved, 30 in all. */
  readonly codes: Uint32Array;
}

/** By the middle of each triangle, in a grid of 1024 cells a side. Triangles in one cell keep their order. */
export function sortByPlace(corners: Float32Array): Sorted {
  const count = corners.length / 9;
  const codes = new Uint32Array(count);
  const { low, size } = middlesOf(corners);
  const scale = size === 0 ? 0 : (CELLS - 0.01) / size;
  for (let triangle = 0; triangle < count; triangle += 1) {
    let code = 0;
    for (let k = 0; k < 3; k += 1)
      code |= spread(Math.floor((tripled(corners, triangle, k) - (low[k] ?? 0)) * scale)) << k;
    codes[triangle] = code;
  }
  return { order: sortByCode(codes), codes };
}

/** Three times the middle of a triangle along one axis. */
function tripled(corners: Float32Array, triangle: number, axis: number): number {
  const at = 9 * triangle + axis;
  return (corners[at] as number) + (corners[at + 3] as number) + (corners[at + 6] as number);
}

function middlesOf(corners: Float32Array): { low: number[]; size: number } {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let triangle = 0; triangle < corners.length / 9; triangle += 1) {
    for (let k = 0; k < 3; k += 1) {
      const value = tripled(corners, triangle, k);
      if (value < (low[k] as number)) low[k] = value;
      if (value > (high[k] as number)) high[k] = value;
    }
  }
  return { low, size: Math.max(...high.map((value, k) => value - (low[k] as number))) };
}

/** Ten bits with two blank ones after each. */
function spread(cell: number): number {
  let bits = cell;
  bits = (bits | (bits << 16)) & 0x030000ff;
  bits = (bits | (bits << 8)) & 0x0300f00f;
  bits = (bits | (bits << 4)) & 0x030c30c3;
  return (bits | (bits << 2)) & 0x09249249;
}

const DIGIT_BITS = 10;
const DIGITS = 1 << DIGIT_BITS;

/** A radix sort of three passes. */
function sortByCode(codes: Uint32Array): Uint32Array {
  let order = new Uint32Array(codes.length);
  let next = new Uint32Array(codes.length);
  for (let place = 0; place < order.length; place += 1) order[place] = place;
  for (let shift = 0; shift < 3 * DIGIT_BITS; shift += DIGIT_BITS) {
    sortByDigit(codes, shift, { order, next });
    [order, next] = [next, order];
  }
  return order;
}

interface Orders {
  readonly order: Uint32Array;
  readonly next: Uint32Array;
}

function sortByDigit(codes: Uint32Array, shift: number, { order, next }: Orders): void {
  const starts = new Uint32Array(DIGITS + 1);
  for (let place = 0; place < codes.length; place += 1) {
    const after = (((codes[place] as number) >>> shift) & (DIGITS - 1)) + 1;
    starts[after] = (starts[after] as number) + 1;
  }
  for (let digit = 0; digit < DIGITS; digit += 1)
    starts[digit + 1] = (starts[digit + 1] as number) + (starts[digit] as number);
  for (let place = 0; place < order.length; place += 1) {
    const triangle = order[place] as number;
    const digit = ((codes[triangle] as number) >>> shift) & (DIGITS - 1);
    const at = starts[digit] as number;
    next[at] = triangle;
    starts[digit] = at + 1;
  }
}
