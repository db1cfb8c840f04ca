// Charts: labels of the staircase. In: risers, the room there is. Out: a label left of each riser, where all is empty above
// the tread before it, or at the left edge right of it, where all is empty below its own tread; names give way to
// numbers, numbers to ranges, so that no two overlap.
import type { StairsRoom, StairsScale } from './draw-room.js';
import type { Riser } from './view-chart.js';

export interface Label {
  /** Share of the width at which the riser stands. */
  readonly x: number;
  /** On which side of the riser the label is. */
  readonly side: 'left' | 'right';
  /** Baseline, pixels. */
  readonly y: number;
  /** `4`, or `4–6` where several share one. */
  readonly no: string;
  /** '' where there is no room for it. */
  readonly name: string;
}

/** What a label covers at the least width, pixels. */
interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

interface Placed {
  readonly label: Label;
  readonly box: Box;
  readonly riser: Riser;
}

const fontSize = 12;
const lineHigh = 14;
/** Between riser and label, pixels. */
export const gap = 8;
const longestName = 28;

/** Wide enough for most letters; ideographs and the like are as wide as they are high. */
const widthOf = (text: string): number =>
  [...text].reduce((sum, letter) => sum + (letter > '\u1100' ? fontSize + 1 : 7), 4);

/** In the order of the risers. One that finds no room at all is left to the table. */
export function placeLabels(risers: readonly Riser[], room: StairsRoom, scale: StairsScale): Label[] {
  const placed: Placed[] = [];
  for (const riser of risers) {
    const no = String(riser.no);
    const found = (room.names ? [riser.name, ''] : [''])
      .map((name) => placeOne(riser, { name, no }, { room, scale }))
      .find((one) => fits(one, placed, room));
    if (found !== undefined) placed.push(found);
    else shareLast(riser, placed, { room, scale });
  }
  return placed.map(({ label }) => label);
}

interface Placing {
  readonly room: StairsRoom;
  readonly scale: StairsScale;
}

function placeOne(riser: Riser, { name, no }: Pick<Label, 'name' | 'no'>, { room, scale }: Placing): Placed {
  const x = scale.x(riser.across);
  const at = x * room.leastWidth;
  const side = at - gap - widthOf(no) < room.left * room.leastWidth ? 'right' : 'left';
  const middle = middleOf(riser, side, scale);
  const width = widthOf(name === '' ? no : `${name} ${no}`);
  const left = side === 'left' ? at - gap - width : at + gap;
  return {
    label: { x, side, y: middle + fontSize / 3, no, name },
    box: { left, right: left + width, top: middle - lineHigh / 2, bottom: middle + lineHigh / 2 },
    riser,
  };
}

/** In the middle of the rise; where that is too low for a line, clear of the tread next to the label. */
function middleOf({ up, fromUp }: Riser, side: Label['side'], { y }: StairsScale): number {
  const [upper, lower] = [y(up), y(fromUp)];
  const middle = (upper + lower) / 2;
  const clear = lineHigh / 2 + 2;
  return side === 'left' ? Math.min(middle, lower - clear) : Math.max(middle, upper + clear);
}

const fits = (
  { label: { name }, box }: Placed,
  others: readonly Placed[],
  { left, leastWidth }: StairsRoom,
) =>
  name.length <= longestName &&
  box.left >= left * leastWidth &&
  box.right <= leastWidth &&
  others.every((other) => !overlap(box, other.box));

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** The last label takes the riser in where it stands: `4` becomes `4–5`. Where even that has no room, nothing changes. */
function shareLast(riser: Riser, placed: Placed[], placing: Placing): void {
  const last = placed.at(-1);
  if (last === undefined) return;
  const no = `${last.riser.no}–${riser.no}`;
  const shared = placeOne(last.riser, { name: '', no }, placing);
  if (fits(shared, placed.slice(0, -1), placing.room)) placed[placed.length - 1] = shared;
}
