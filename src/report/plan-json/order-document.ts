// Report view: what plan.json tells of orders, of cash against figures, and of a budget. In: nothing. Out: schemas for
// plan-document.ts.
import { z } from 'zod';
import { cash, container, list, ml, number, rows, text, whole, yesNo } from './document-fields.js';

const pot = z.object({
  paint: text('Name of the paint.'),
  sizeMl: number('Volume on the label, millilitres.'),
  container,
  count: whole('Pots in all: pots of the offer times offers bought.'),
  usableMl: ml('What one of them gives.'),
  coversMl: ml(
    'What the needs take of all of them; 0 for pots that only fill up an order or come with a set.',
  ),
  overMl: ml('What all of them leave over.'),
  cost: cash('Share of the line’s cost.'),
  code: text('GTIN; blank where none is known.'),
});

export const line = z.object({
  shop: text('Who sells it.'),
  offer: text('What the shop calls it.'),
  count: whole('How many of the offer to buy.'),
  price: cash('Price of one.'),
  cost: cash('Price of all.'),
  pots: list(pot, 'The pots in it.'),
});

const bill = z.object({
  shop: text('Name of the shop.'),
  goods: cash('Sum of its lines.'),
  postage: cash('What sending costs; below 0 where goods of this order make those of the army travel free.'),
  belowLeastOrder: cash('The shop’s least order, where the goods do not reach it; else null.').nullable(),
});

export const order = z.object({
  status: z
    .enum(['nothing to buy', 'proved', 'not proved', "can't be met"])
    .describe(
      'proved: no order that covers the needs costs less; not proved: none costs less than the total less ' +
        '`aboveBest`; can’t be met: `unmet` is missing, the rest is ordered.',
    ),
  total: cash('Goods and postage.'),
  postage: cash('All postage; below 0 where this order makes another one travel free.'),
  aboveBest: cash('At most this much above the best possible order of the same; 0 where proved.'),
  tiesOpen: yesNo('True where it is proved, but another order at its cost may take fewer shops or pots.'),
  lines: list(line, 'What to buy, by shop.'),
  bills: list(bill, 'What each shop charges.'),
  unmet: rows('What no offer covers.', { paint: text('Name of the paint.'), ml: ml('What is missing.') }),
  passedOver: rows('Sets that hold several needed paints and are not bought.', {
    shop: text('Who sells it.'),
    offer: text('Name of the set.'),
    extra: cash('How much more the cheapest order with it costs.'),
  }),
  fromOneShop: rows('The cheapest order from one shop alone, for each that covers it all.', {
    shop: text('Name of the shop.'),
    total: cash('Goods and postage.'),
  }),
});

export const alike = z.object({
  paint: text('Name of the paint.'),
  missingMl: ml('What no offer covers.'),
  sizeMl: ml('Of one pot.'),
  container,
  count: whole('Pots that hold it.'),
  price: cash('Of one, as last paid; null where nobody paid any.').nullable(),
  cost: cash('Of all; in no total.').nullable(),
  mark: z.literal('yours').nullable().describe('Where the price comes from; null without one.'),
  isOwned: yesNo('False where no pot of it was ever owned: then it is the usual pot of its kind.'),
  isAsLikely: yesNo(
    'True where, buying in goes, it has no threshold since nobody sells it: what is likely of it counts as needed for sure.',
  ),
});

export const stairs = z.object({
  everyStep: yesNo(
    'False where steps were passed over: then the cash may rise before the step that shows it.',
  ),
  mostFigures: whole('Twice the army.'),
  steps: rows(
    'Figures are painted by priority; past the army a second one follows, from the first step of its schemes.',
    {
      figures: whole('From so many figures on,'),
      cash: cash('the cheapest order costs so much, postage included.'),
      because: list(z.string(), 'Paints of which the order of the step before holds too little.'),
      proved: yesNo('True where no order for so many figures costs less.'),
    },
  ),
});

export const budget = z.object({
  budget: cash('The sum given.'),
  order: order.describe('The order for what is finished; within the budget.'),
  units: rows('Every unit, in the order of priority.', {
    unit: text('Name of the unit.'),
    figures: whole('How many it has.'),
    finished: whole('How many of them the budget finishes.'),
  }),
  nextSteps: rows('The next unfinished units, each by itself.', {
    unit: text('Name of the unit.'),
    figures: whole('Figures that are left of it.'),
    extra: cash('What finishing them, and nothing else more, costs beyond `order`.'),
  }),
  proved: yesNo('True where it is proved that no more figures can be had, whole units first.'),
  notTried: whole('Units of the last priorities that were not tried.'),
});
