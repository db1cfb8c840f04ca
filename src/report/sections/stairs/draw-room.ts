// Charts: how much room the staircase has. In: nothing. Out: a wide and a narrow drawing, and where shares stand in them.

/** Heights are pixels, `left` and `right` shares of the drawing's width. */
export interface StairsRoom {
  readonly name: 'wide' | 'narrow';
  /** Pixels; the drawing is never narrower, so labels that fit then fit always. */
  readonly leastWidth: number;
  readonly left: number;
  readonly right: number;
  readonly high: number;
  /** True where paints are named in the drawing. */
  readonly names: boolean;
}

export const wide: StairsRoom = {
  name: 'wide',
  leastWidth: 600,
  left: 0.08,
  right: 0.015,
  high: 330,
  names: true,
};

export const narrow: StairsRoom = {
  name: 'narrow',
  leastWidth: 280,
  left: 0.15,
  right: 0.03,
  high: 280,
  names: false,
};

/** Above the most cash, for the army's label; below no cash, for the figures. */
const top = 42;
const below = 42;

/** Where a share stands in a drawing. */
export interface StairsScale {
  /** Share of the drawing's width. */
  readonly x: (across: number) => number;
  /** Pixels from the top. */
  readonly y: (up: number) => number;
}

export const scaleOf = ({ left, right, high }: StairsRoom): StairsScale => ({
  x: (across) => left + across * (1 - left - right),
  y: (up) => top + (1 - up) * (high - top - below),
});
