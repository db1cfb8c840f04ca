// Export: amounts as text or number. In: whole minor units and digits of the currency, or ml. Out: `12.50`, 12.5.
/** A decimal string with exactly `digits` after the point: `formatAmount(1250, 2)` is `12.50`. */
export function formatAmount(minor: number, digits: number): string {
  const sign = minor < 0 ? '-' : '';
  const figures = String(Math.abs(minor)).padStart(digits + 1, '0');
  const point = figures.length - digits;
  return digits === 0 ? `${sign}${figures}` : `${sign}${figures.slice(0, point)}.${figures.slice(point)}`;
}

/** The nearest number of major units, as a spreadsheet holds it: `majorNumber(1250, 2)` is 12.5. */
export function majorNumber(minor: number, digits: number): number {
  return Number(formatAmount(minor, digits));
}

/** Millilitres to the nearest hundredth as the report has them, but never 0 while some are. */
export function roundMl(ml: number): number {
  return ml <= 0 ? 0 : Math.max(0.01, Math.round(ml * 100) / 100);
}
