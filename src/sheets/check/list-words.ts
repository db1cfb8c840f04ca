// Checks: the words that a part or a piece of kit can be, in groups to choose from. In: a wrong word. Out: what to write.

import { type KitItem, kitItems } from '../../model/words.js';
import { bodyParts, type Part, parts } from '../../model/zones.js';
import { findNearest, joinOr } from './find-nearest.js';

const groupOfKit: Readonly<Record<KitItem, string>> = {
  weapon: 'arms',
  bow: 'arms',
  'small shield': 'shields',
  'round shield': 'shields',
  'large shield': 'shields',
  cloak: 'cloak',
  horse: 'mount',
  barding: 'mount',
  wings: 'creature',
  tail: 'creature',
  saddle: 'mount',
};

/** The nearest pieces of kit, or all of them by what they are: `weapon or bow; small shield, ...`. */
export function kitNear(written: string): string {
  const groups = new Set(Object.values(groupOfKit));
  const inGroup = (group: string): string => joinOr(kitItems.filter((item) => groupOfKit[item] === group));
  return findNearest(written, kitItems) || [...groups].map(inGroup).join('; ');
}

const isBody = (part: Part): boolean => bodyParts.some((one) => one === part);
const isKit = (part: Part): boolean => kitItems.some((one) => one === part);

/** The nearest parts, or all of them by where they are. */
export function partsNear(written: string): string {
  const others = parts.filter((part) => !isBody(part) && !isKit(part));
  return (
    findNearest(written, parts) ||
    `a part of the body (${bodyParts.join(', ')}), a piece of kit (${kitItems.join(', ')}), ${joinOr(others)}`
  );
}
