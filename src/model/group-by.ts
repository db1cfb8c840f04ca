// Model: rows that belong together. In: rows, what tells it. Out: the same by that, in their order.

/** A row without a key is in no group. */
export function groupBy<Row, Key>(
  rows: Iterable<Row>,
  keyOf: (row: Row) => Key | undefined,
): Map<Key, Row[]> {
  const groups = new Map<Key, Row[]>();
  for (const row of rows) {
    const key = keyOf(row);
    if (key === undefined) continue;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [row]);
    else group.push(row);
  }
  return groups;
}

export const groupByPaint = <Row extends { readonly paint: string }>(
  rows: readonly Row[],
): Map<string, Row[]> => groupBy(rows, ({ paint }) => paint);
