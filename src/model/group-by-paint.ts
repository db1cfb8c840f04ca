// Model: rows of one paint together. In: rows that name a paint. Out: the same by paint, in their order.

export const groupByPaint = <Row extends { readonly paint: string }>(
  rows: readonly Row[],
): Map<string, Row[]> => groupBy(rows, ({ paint }) => paint);

/** The same by any name. */
export function groupBy<Row>(rows: readonly Row[], nameOf: (row: Row) => string): Map<string, Row[]> {
  const rowsOf = new Map<string, Row[]>();
  for (const row of rows) {
    const name = nameOf(row);
    const others = rowsOf.get(name);
    if (others === undefined) rowsOf.set(name, [row]);
    else others.push(row);
  }
  return rowsOf;
}
