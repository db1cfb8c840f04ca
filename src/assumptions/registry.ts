// Assumptions: the one registry of values that the estimate rests on. In: nothing. Out: every assumption by name.
import type { Assumption, Assumptions } from '../model/assumption.js';
import { bodyAssumptions } from './body.js';
import { colourAssumptions } from './colour.js';
import { errorAssumptions } from './errors.js';
import { filmAssumptions } from './film.js';
import { layerAssumptions } from './layers.js';
import { potAssumptions } from './pots.js';
import { timeAssumptions } from './time.js';
import { zoneAssumptions } from './zones.js';

/** Every assumption in the order in which the report lists them. */
const listed: readonly Assumption[] = [
  ...bodyAssumptions,
  ...zoneAssumptions,
  ...filmAssumptions,
  ...layerAssumptions,
  ...potAssumptions,
  ...colourAssumptions,
  ...timeAssumptions,
  ...errorAssumptions,
];

/** The registry as it stands before a painter's own values and weighings. */
export const registry: Assumptions = new Map(listed.map((one) => [one.name, one]));
