// Model: how far something holds, by halving. In: whole numbers, what holds of them. Out: the last of which it does.

/** The last number from `low` to `high` of which it holds, where it does of `low` and of none past one of which it does not. */
export function lastWhere(low: number, high: number, holds: (number: number) => boolean): number {
  let [from, to] = [low, high];
  while (from < to) {
    const middle = Math.ceil((from + to) / 2);
    if (holds(middle)) from = middle;
    else to = middle - 1;
  }
  return from;
}
