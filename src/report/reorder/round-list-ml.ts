// Export: millilitres as a shopping list has them. In: ml. Out: the same, rounded.

/** Millilitres to the nearest hundredth as the report has them, but never 0 while some are. */
export function roundMl(ml: number): number {
  return ml <= 0 ? 0 : Math.max(0.01, Math.round(ml * 100) / 100);
}
