// Colour: what lies beneath a coat. In: steps in order on the parts of one figure. Out: the steps that each one covers.
import type { Step } from '../model/sheets.js';
import type { Part, PartShare } from '../model/zones.js';

/** A piece of a part. */
interface Patch {
  /** Of the part, above 0 to 1. */
  readonly share: number;
  /** The zone that painted it, where that zone covers only some of the part. */
  readonly zone: string | undefined;
  /** The step that covers it; undefined: bare. */
  readonly coat: Step | undefined;
}

/** Each part's patches, the last painted first. Their shares sum to 1. */
export type Ground = Map<Part, readonly Patch[]>;

/** A figure before its first step. */
export function bareGround(parts: Iterable<Part>): Ground {
  return new Map([...parts].map((part) => [part, [{ share: 1, zone: undefined, coat: undefined }]]));
}

/** What a coat lies on, and how much of the part that is. */
export interface Beneath {
  readonly part: Part;
  readonly share: number;
  readonly coat: Step | undefined;
}

interface Coat {
  readonly step: Step;
  readonly parts: readonly PartShare[];
  /** 0 to 1: how much of the zone is covered. */
  readonly areaShare: number;
}

/**
 * Lays a coat on the parts of its zone, changes the ground, and gives what it lies on. A zone that covers a whole part
 * lies on all of it. One that covers some of it (hair, half the head) lies where it was before, else on what no other
 * such zone has taken (the face), and only then on those, the earliest first: eyes come upon a face that was
 * painted before the hair. A coat on some of its zone lies on what was painted there last.
 */
export function layCoat(ground: Ground, { step, parts, areaShare }: Coat): Beneath[] {
  return parts.flatMap(({ part, share }) => {
    const patches = ground.get(part);
    if (patches === undefined) return [];
    const zone = share < 1 ? step.zone : undefined;
    const { taken, left } = takePatches(patches, zone, share * areaShare);
    if (taken.length === 0) return [];
    const covered = taken.reduce((sum, patch) => sum + patch.share, 0);
    ground.set(part, [{ share: covered, zone, coat: step }, ...left]);
    return taken.map((patch) => ({ part, share: patch.share, coat: patch.coat }));
  });
}

/** Below this a patch is what rounding left of it. */
const sameShare = 1e-9;

function takePatches(patches: readonly Patch[], zone: string | undefined, share: number) {
  const taken: Patch[] = [];
  const left = new Map(patches.map((patch) => [patch, patch.share]));
  let wanted = share;
  for (const patch of inOrder(patches, zone)) {
    const piece = Math.min(patch.share, wanted);
    if (piece <= sameShare) continue;
    taken.push({ ...patch, share: piece });
    left.set(patch, patch.share - piece);
    wanted -= piece;
  }
  const rest = [...left].filter(([, piece]) => piece > sameShare);
  return { taken, left: rest.map(([patch, piece]) => ({ ...patch, share: piece })) };
}

/** Which patches a zone takes first. */
function inOrder(patches: readonly Patch[], zone: string | undefined): Patch[] {
  const own = patches.filter((patch) => patch.zone === zone);
  const free = patches.filter((patch) => zone !== undefined && patch.zone === undefined);
  const others = patches.filter((patch) => patch.zone !== undefined && patch.zone !== zone);
  return [...own, ...free, ...others.reverse()];
}
