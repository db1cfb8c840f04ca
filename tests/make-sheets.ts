// Small checked sheets for stage tests: say what matters, the rest takes the default of its column.

import type { Figure } from '../src/model/figure.js';
import type { MeasuredPiece } from '../src/model/measured.js';
import type { Offer, Paint, Pot, Sheets, Shop, Step, Unit } from '../src/model/sheets.js';

export const makePot = (pot: Partial<Pot> & { paint: string }): Pot => ({
  row: 2,
  sizeMl: 17,
  left: { how: 'by eye', share: 1 },
  leftGiven: false,
  container: 'dropper',
  ordered: false,
  ...pot,
});

export const makePaint = (paint: Partial<Paint> & { paint: string }): Paint => ({
  kind: 'colour',
  alsoCalled: [],
  ...paint,
});

export const makeFigure = (figure: Partial<Figure> = {}): Figure => ({
  figure: 'guard',
  ...(figure.boxMm === undefined ? { eyeMm: 28 } : {}),
  build: figure.boxMm === undefined ? 'heroic' : 'closed',
  dress: 'clothed',
  kit: [],
  baseHighMm: 3,
  perBase: 1,
  ...figure,
});

/** A piece of a model, cm2 on one side: by hundredths of free sky, how many of its points see so much from either side. */
export function makePiece(
  part: string,
  area: number,
  {
    open = { 20: 100 },
    hidden = { 0: 100 },
  }: { open?: Record<number, number>; hidden?: Record<number, number> } = {},
): MeasuredPiece {
  const counts = (by: Record<number, number>): number[] =>
    Array.from({ length: 21 }, (_, sky) => by[sky] ?? 0);
  return { part, isSole: false, area, points: 100, open: counts(open), hidden: counts(hidden) };
}

export const makeStep = (step: Partial<Step> & { step: number; paint?: string }): Step => {
  const { paint = 'Slate', ...rest } = step;
  return { row: step.step + 1, zone: 'whole', layer: 'base coat', paints: [{ paint, share: 1 }], ...rest };
};

export const makeUnit = (unit: Partial<Unit> = {}): Unit => ({
  row: 2,
  unit: 'watch',
  figure: 'guard',
  scheme: 'plain',
  count: 10,
  batch: 10,
  done: 0,
  priority: 1,
  ...unit,
});

export const makeOffer = (offer: Partial<Offer> & Pick<Offer, 'pots' | 'priceMinor'>): Offer => ({
  row: 2,
  shop: 'Quay',
  offer: 'pot',
  ...offer,
});

export const offerPot = (paint: string, sizeMl = 17, count = 1): Offer['pots'][number] => ({
  paint,
  sizeMl,
  count,
  container: 'dropper',
});

export const makeShop = (shop: Partial<Shop> = {}): Shop => ({ shop: 'Quay', postageMinor: 0, ...shop });

interface Parts extends Partial<Omit<Sheets, 'figures' | 'schemes' | 'paints' | 'shops'>> {
  readonly figures?: readonly Figure[];
  readonly steps?: readonly Step[];
  readonly paints?: readonly Paint[];
  readonly shops?: readonly Shop[];
}

/** Sheets with one scheme called `plain`; every paint that a pot, offer or step names has an entry. */
export function makeSheets({
  figures = [makeFigure()],
  steps = [],
  paints = [],
  shops = [],
  ...rest
}: Parts): Sheets {
  const named = [
    ...(rest.pots ?? []).map(({ paint }) => paint),
    ...steps.flatMap((step) => step.paints.map(({ paint }) => paint)),
    ...(rest.offers ?? []).flatMap((offer) => offer.pots.map(({ paint }) => paint)),
  ];
  const entries = new Map(named.map((paint) => [paint, makePaint({ paint })]));
  for (const paint of paints) entries.set(paint.paint, paint);
  return {
    pots: [],
    offers: [],
    zones: [],
    army: [makeUnit()],
    extras: [],
    log: [],
    swaps: [],
    settings: { currency: 'EUR', locale: 'en', surePercent: 80, restock: 'army', overrides: [] },
    defaults: [],
    read: [],
    ...rest,
    paints: entries,
    shops: new Map(shops.map((shop) => [shop.shop, shop])),
    figures: new Map(figures.map((figure) => [figure.figure, figure])),
    schemes: new Map([['plain', { scheme: 'plain', steps }]]),
  };
}
