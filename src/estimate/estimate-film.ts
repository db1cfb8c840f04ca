// Estimate: paint from area and film. In: cm2, µm, shares. Out: ml. The formulas of coating practice at small size.

/** One square centimetre under one micron. */
const mlPerCm2Micron = 0.0001;

/** What decides how much paint stays on a surface. */
export interface Film {
  /** The whole surface, all figures together. */
  readonly areaCm2: number;
  /** 0 to 1: how much of it is covered. */
  readonly areaShare: number;
  readonly coats: number;
  /** Wet film of one coat of unthinned paint. */
  readonly wetFilmMicrons: number;
  /** Parts of water to one of paint: thinning spends no more paint a coat, it lays less. */
  readonly thin: number;
}

/**
 * Paint in ml (as it comes from the pot) that ends on the figures:
 * `area x share x coats x wet film / (1 + thin) x 0.0001`. 10 cm2 at 50 µm, two coats: 0.1 ml.
 * Any factor of 0 gives 0. Wet film over area: ISO 3233-3, spreading rate.
 */
export function onFigureMl({ areaCm2, areaShare, coats, wetFilmMicrons, thin }: Film): number {
  return (areaCm2 * areaShare * coats * wetFilmMicrons * mlPerCm2Micron) / (1 + thin);
}

/** What is lost between pot and figure. */
export interface Loss {
  /** Share of the paint put out that ends on the figure, above 0 to 1. */
  readonly transfer: number;
  /** What palette, brush, cup or nozzle keep at each sitting. */
  readonly leftoverMl: number;
  readonly sittings: number;
  /** This painter against the likely one. */
  readonly painter: number;
}

/** Paint put out in ml: `(on the figure / transfer + leftover of every sitting) x painter`. */
export function putOutMl(onFigure: number, { transfer, leftoverMl, sittings, painter }: Loss): number {
  return (onFigure / transfer + leftoverMl * sittings) * painter;
}

/** Full batches and one for the rest: 25 figures in tens are 3 sittings; no figures, none. */
export function countSittings(figures: number, batch: number): number {
  return Math.ceil(figures / batch);
}

/** How the size of a target changes what it catches of a spray. */
export interface Catch {
  readonly fullTargetCm2: number;
  readonly least: number;
  readonly most: number;
  /** What a large target can raise the transfer to. */
  readonly mostTransfer: number;
}

/**
 * Share of sprayed paint that a target catches: `transfer x sqrt(target / full target)`, the root held between `least`
 * and `most`, the product at `mostTransfer` (or at a transfer above it). From memory: a small target catches less of the cone.
 */
export function sprayTransfer(
  transfer: number,
  targetCm2: number,
  { fullTargetCm2, least, most, mostTransfer }: Catch,
): number {
  const caught = Math.min(most, Math.max(least, Math.sqrt(targetCm2 / fullTargetCm2)));
  return Math.min(1, Math.max(mostTransfer, transfer), transfer * caught);
}
