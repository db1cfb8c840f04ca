// Model: rows of one paint together. In: rows that name a paint. Out: the same by paint, in their order.

export function groupByPaint<Row extends { readonly paint: string }>(
  rows: readonly Row[],
): Map<string, Row[]> {
  const rowsOf = new Map<string, Row[]>();
  for (const row of rows) {
    const others = rowsOf.get(row.paint);
    if (others === undefined) rowsOf.set(row.paint, [row]);
    else others.push(row);
  }
  return rowsOf;
}
