// Columns: what money buys. In: nothing. Out: the columns of offers, shops and extras.
import { availableCount, potCount } from '../check/read-cell/read-count.js';
import { nameKind } from '../check/read-cell/read-name.js';
import { potVolume, servedFigures } from '../check/read-cell/read-number.js';
import { free, money, needed } from './column.js';
import { ofPot } from './shelf-columns.js';

export const offers = {
  shop: needed('shop', nameKind, { says: 'Who sells it.', from: 'shops', example: 'The Eel Trap' }),
  offer: needed('offer', nameKind, {
    says: 'What the shop calls it. Rows with the same shop and offer are one set.',
    example: 'brick red 17 ml',
  }),
  price: needed('price', money, {
    isShared: true,
    isIn: 'money',
    says: 'Price of the whole offer; in a set it stands on one row.',
    example: '3.50',
  }),
  paint: needed('paint', nameKind, {
    says: 'Name of the paint in it.',
    from: 'paints',
    example: 'brick red',
  }),
  sizeMl: needed('size ml', potVolume, { says: 'Volume of one pot, in millilitres.', example: '17' }),
  pots: free('pots', potCount, {
    says: 'How many such pots the offer holds.',
    blank: { means: '1', value: 1, isCounted: true },
    example: '1',
  }),
  available: free('available', availableCount, {
    says: 'How many of the offer can be had.',
    blank: { means: 'no limit' },
    example: '4',
  }),
  ...ofPot,
};

const sum = { isIn: 'money' } as const;

export const shops = {
  shop: needed('shop', nameKind, { says: 'Name as in the offers sheet.', example: 'The Eel Trap' }),
  postage: free('postage', money, {
    ...sum,
    says: 'What one delivery costs.',
    blank: { means: '0', value: 0, isCounted: true },
    example: '4.90',
  }),
  freeFrom: free('free from', money, {
    ...sum,
    says: 'Goods of this sum or more travel free.',
    blank: { means: 'postage is always paid', isCounted: true },
    example: '50',
  }),
  leastOrder: free('least order', money, {
    ...sum,
    says: 'The shop takes no order below this sum.',
    blank: { means: 'any sum', isCounted: true },
    example: '10',
  }),
};

export const extras = {
  item: needed('item', nameKind, { says: 'A brush, flock, sand, thinner ...', example: 'static grass' }),
  price: needed('price', money, { ...sum, says: 'What it costs.', example: '6.50' }),
  serves: needed('serves', servedFigures, {
    says: 'How many figures one of it serves.',
    example: '200',
  }),
};
