// Surface: places of objects in one another. In: the twelve numbers of a 3MF transform. Out: points where they stand.
// 3MF Core Specification 1.3, 3.3: rows of a 4 x 4 matrix without its last column; points are rows before it.

export type Transform = readonly number[];

const nowhereElse: Transform = [1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0];

/** First `inner`, then `outer`. */
export function multiply(inner: Transform, outer: Transform): Transform {
  return inner.map((_, index) => {
    const [row, column] = [Math.floor(index / 3), index % 3];
    const product = [0, 1, 2].reduce(
      (sum, k) => sum + (inner[3 * row + k] ?? 0) * (outer[3 * k + column] ?? 0),
      0,
    );
    return row === 3 ? product + (outer[9 + column] ?? 0) : product;
  });
}

/** The point whose three numbers begin at `from`, moved and written to `to`. */
export function place(
  points: Float64Array,
  from: number,
  { transform, to, at }: { readonly transform: Transform; readonly to: Float64Array; readonly at: number },
): void {
  const [x = 0, y = 0, z = 0] = [points[from], points[from + 1], points[from + 2]];
  for (let k = 0; k < 3; k += 1)
    to[at + k] =
      x * (transform[k] ?? 0) +
      y * (transform[3 + k] ?? 0) +
      z * (transform[6 + k] ?? 0) +
      (transform[9 + k] ?? 0);
}

/** `1 0 0 0 1 0 0 0 1 10 20 0`; left out, an object stays where it is. Undefined where it is no transform. */
export function readTransform(written: string | undefined): Transform | undefined {
  if (written === undefined) return nowhereElse;
  const numbers = written.trim().split(/\s+/).map(Number);
  return numbers.length === 12 && numbers.every(Number.isFinite) ? numbers : undefined;
}
