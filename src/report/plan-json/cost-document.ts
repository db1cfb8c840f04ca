// Report view: what plan.json holds of the army's sums of money. In: nothing. Out: their schema.
import { z } from 'zod';
import { atLeast, cash, cost, group, list, rows, text, whole, yesNo } from './document-fields.js';

export const money = group('Money so far.', {
  spent: rows('What the log says was bought, by month and shop.', {
    month: text('As 2026-03.'),
    shop: text('Blank where the log names none.'),
    cash: cash('What its pots and postage cost.'),
  }),
  begunWith: cost('What the pots of the pots sheet are worth, by their price and what it says is left.'),
  bought: cash('What was bought since.'),
  standing: cost('What of both stands on the shelf.'),
  onTheWay: cost('What of both is on its way.'),
  used: cost('What of both is used up or thrown away.'),
  usedByEstimate: cost('What the work that is done should have used; extras included.'),
  usedByEstimateAtLeast: atLeast,
  finishedFigures: rows(
    'What finished figures have cost; only where some paint of theirs was counted or measured since.',
    {
      figure: text('The sculpt.'),
      scheme: text('Its scheme.'),
      figures: whole('Figures of units that are finished.'),
      estimated: cost('Cost of use of one, by the estimate.'),
      really: cost('By what its paints took: by counts and amounts in the log, else as estimated.'),
      atLeast,
    },
  ),
  unpricedPots: whole('Pots without a price, which are in none of these sums.'),
});

export const armyShare = z.object({
  army: text('Name of its folder or workbook.'),
  units: whole('Units in it.'),
  figures: whole('Figures in it.'),
  cash: cash('Its share of the order, postage included; the armies add up to the total of the order.'),
  use: cost('Cost of use of its schemes on its figures, extras included.'),
  useAtLeast: atLeast,
  useRemaining: cost('Of that, what is still to be done.'),
  short: list(z.string(), 'Paints that its remaining work needs and that run short on the shelf of all.'),
});

export const costs = group('Sums over the army. Cost of use and cash are never to be added up.', {
  use: cost('Cost of use of every scheme on every figure, extras included.'),
  useLow: cost('One time in ten it is lower; what has no price is left out.'),
  useHigh: cost('One time in ten it is higher.'),
  useAtLeast: atLeast,
  useRemaining: cost('The same for what is still to be done.'),
  useRemainingLow: cost('One time in ten it is lower; what has no price is left out.'),
  useRemainingHigh: cost('One time in ten it is higher.'),
  remainingAtLeast: atLeast,
  extras: cost('Of `use`, the extras.'),
  cash: cash('Cash for the order, postage included.'),
  restockCash: cash('Cash for the restock order, apart.'),
  figuresPrice: cash('Price of the unpainted figures.'),
  figuresPriceAtLeast: yesNo('True where a figure has no price.'),
  unpriced: list(z.string(), 'Paints of the plan without a price, wholly or in part.'),
  zones: rows('Cost of use by zone; adds up to `useRemaining` less extras.', {
    zone: text('The zone.'),
    useCost: cost('Paint of the work still to be done.'),
    atLeast,
  }),
  layers: rows('Cost of use by layer; adds up to the same.', {
    layer: text('The layer.'),
    useCost: cost('Paint of the work still to be done.'),
    atLeast,
  }),
});
