// Types of make-army.mjs, for tests that make armies with it.
export function makeArmy(army: {
  readonly sample: string;
  readonly folder: string;
  readonly rows: number;
  readonly seed?: number;
}): void;
