// Assumptions: a painter's own values over the registry. In: registry and overrides. Out: assumptions marked `yours`.
import type { Assumption, Assumptions } from '../model/assumption.js';
import type { Override } from '../model/sheets.js';

/**
 * The registry with each override in place. An override without low and high keeps the doubt in proportion:
 * 60 over a wet film of 30 / 50 / 80 gives 36 / 60 / 96. Names that the registry lacks are left out.
 */
export function overrideAssumptions(registry: Assumptions, overrides: readonly Override[]): Assumptions {
  const merged = new Map(registry);
  for (const override of overrides) {
    const was = registry.get(override.name);
    if (was !== undefined) merged.set(override.name, overridden(was, override));
  }
  return merged;
}

function overridden(was: Assumption, { likely, low, high }: Override): Assumption {
  const scale = was.likely === 0 ? 0 : likely / was.likely;
  // A share of something can't pass the whole of it.
  const most = /^of (the paint|the labelled)/.test(was.unit) ? Math.max(1, likely) : Number.POSITIVE_INFINITY;
  const inProportion = (bound: number): number => (scale === 0 ? likely : Math.min(most, bound * scale));
  return {
    ...was,
    likely,
    low: low ?? inProportion(was.low),
    high: high ?? inProportion(was.high),
    mark: 'yours',
    source: 'your settings sheet',
  };
}
