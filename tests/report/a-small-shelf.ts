// The shelf of the small plan: seven paints, each a case of its own; what is ordered for army and shelf.
import type { Order } from '../../src/model/order.js';
import type { Paint } from '../../src/model/sheets.js';
import type { PaintStock, ShelfPot } from '../../src/model/stock.js';

/** Of a painter who gets 0.96 of a pot’s label out of it. */
const pot = (row: number, sizeMl: number, share: number, rest: Partial<ShelfPot> = {}): ShelfPot => ({
  row,
  sizeMl,
  container: 'dropper',
  usableMl: sizeMl * 0.96 * share,
  fullUsableMl: sizeMl * 0.96,
  ordered: false,
  readingErrorMl: share === 1 ? 0 : sizeMl * 0.1,
  mark: 'from memory',
  ...rest,
});

type StockParts = Pick<PaintStock, 'paint' | 'needMl' | 'haveMl' | 'leftAfterMl' | 'keepMl' | 'state'> &
  Partial<PaintStock>;

const stock = (parts: StockParts): PaintStock => ({
  pots: [],
  orderedMl: 0,
  toBuyMl: 0,
  runningLow: false,
  mark: 'from memory',
  ...parts,
});

/** In nine draws of ten the pots do so much of the likely need, ml. */
export const smallReachMl: ReadonlyMap<string, number> = new Map([
  ['Kettle grey', 60],
  ['Nettle coat', 2],
  ['Pond wash', 10.1],
  ['Chalk light', 0.9],
  ['Bell brass', 0.14],
  ['Rust hush', 0],
]);

export const smallStock: readonly PaintStock[] = [
  stock({
    paint: 'Kettle grey',
    pots: [pot(2, 400, 0.3, { container: 'can', usableMl: 90, fullUsableMl: 300 })],
    needMl: 60,
    haveMl: 90,
    leftAfterMl: 30,
    keepMl: 60,
    state: 'enough',
    runningLow: true,
  }),
  stock({
    paint: 'Nettle coat',
    pots: [pot(3, 17, 0.25)],
    needMl: 12.1,
    haveMl: 4.08,
    leftAfterMl: 0,
    toBuyMl: 8.02,
    keepMl: 2.55,
    state: 'short',
    runningLow: true,
  }),
  stock({
    paint: 'Pond wash',
    pots: [pot(4, 12, 0.5), pot(5, 12, 1, { ordered: true })],
    needMl: 12.2,
    haveMl: 17.28,
    orderedMl: 11.52,
    leftAfterMl: 5.08,
    keepMl: 1.8,
    state: 'tight',
  }),
  stock({
    paint: 'Chalk light',
    pots: [pot(6, 17, 1)],
    needMl: 0.9,
    haveMl: 16.32,
    leftAfterMl: 15.42,
    keepMl: 2.55,
    state: 'enough',
  }),
  stock({
    paint: 'Bell brass',
    pots: [pot(7, 17, 0.2)],
    needMl: 0.14,
    haveMl: 3.264,
    leftAfterMl: 3.124,
    keepMl: 2.55,
    state: 'enough',
  }),
  stock({
    paint: 'Rust hush',
    needMl: 4.05,
    haveMl: 0,
    leftAfterMl: 0,
    toBuyMl: 4.05,
    keepMl: 0,
    state: 'none owned',
  }),
  stock({
    paint: 'Lamp white',
    pots: [pot(8, 17, 0.05)],
    needMl: 0,
    haveMl: 0.816,
    leftAfterMl: 0.816,
    keepMl: 2.55,
    state: 'enough',
    runningLow: true,
  }),
];

const paint = (name: string, hex?: string): Paint => ({
  paint: name,
  kind: 'colour',
  alsoCalled: [],
  ...(hex === undefined ? {} : { hex }),
});

export const smallPaints: readonly Paint[] = [
  paint('Kettle grey', '#8d9196'),
  paint('Nettle coat', '#5d7a3a'),
  paint('Pond wash', '#3f4a3c'),
  paint('Chalk light', '#e8e2d0'),
  paint('Bell brass'),
  paint('Rust hush', '#8a4b2e'),
  paint('Lamp white', '#fafafa'),
  paint('Moss bed', '#66803f'),
];

/** 8.02 ml of Nettle coat are missing: one pot of 17 ml (16.32 usable). Nobody offers Rust hush. */
export const smallOrder: Order = {
  status: "can't be met",
  aboveBestMinor: 0,
  totalMinor: 740,
  postageMinor: 390,
  lines: [
    {
      shop: 'The Ferry Steps',
      offer: 'Nettle coat, dropper',
      count: 1,
      priceMinor: 350,
      costMinor: 350,
      pots: [
        {
          paint: 'Nettle coat',
          sizeMl: 17,
          container: 'dropper',
          count: 1,
          usableMl: 16.32,
          coversMl: 8.02,
          overMl: 8.3,
          costMinor: 350,
          code: '2000310000217',
        },
      ],
    },
  ],
  bills: [
    {
      shop: 'The Ferry Steps',
      goodsMinor: 350,
      postageMinor: 390,
      totalMinor: 740,
      belowLeastOrderMinor: 150,
    },
  ],
  unmet: [{ paint: 'Rust hush', ml: 4.05 }],
  passedOver: [],
  fromOneShop: [{ shop: 'The Ferry Steps', totalMinor: 740 }],
};

export const smallRestock: Order = {
  status: 'proved',
  aboveBestMinor: 0,
  totalMinor: 640,
  postageMinor: 0,
  lines: [
    {
      shop: 'The Mill Gate',
      offer: 'Lamp white twin box',
      count: 1,
      priceMinor: 640,
      costMinor: 640,
      pots: [
        {
          paint: 'Lamp white',
          sizeMl: 17,
          container: 'dropper',
          count: 2,
          usableMl: 16.32,
          coversMl: 1.734,
          overMl: 30.906,
          costMinor: 640,
        },
      ],
    },
  ],
  bills: [{ shop: 'The Mill Gate', goodsMinor: 640, postageMinor: 0, totalMinor: 640 }],
  unmet: [],
  passedOver: [],
  fromOneShop: [],
};
