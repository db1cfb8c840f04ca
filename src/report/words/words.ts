// Report words: the English that more than one section says. In: words of the model's lists, numbers as text. Out: text.
import type { Mark } from '../../model/assumption.js';
import type { StockState } from '../../model/stock.js';
import type { Container, Layer } from '../../model/words.js';

export const sharedWords = {
  layers: {
    primer: 'primer',
    'base coat': 'base coat',
    midtone: 'midtone',
    wash: 'wash',
    glaze: 'glaze',
    drybrush: 'drybrush',
    highlight: 'highlight',
    'edge highlight': 'edge highlight',
    detail: 'detail',
    'tidy-up': 'tidy-up',
    varnish: 'varnish',
    basing: 'basing',
  } satisfies Record<Layer, string>,
  states: {
    'none owned': 'none owned',
    short: 'short',
    tight: 'tight',
    enough: 'enough',
  } satisfies Record<StockState, string>,
  marks: {
    weighed: { name: 'weighed', meaning: 'You weighed it: learned from your log.' },
    yours: { name: 'yours', meaning: 'It stands in your sheets.' },
    'your model': { name: 'your model', meaning: 'Measured on your own model file.' },
    published: { name: 'published', meaning: 'From a published source, named beside it.' },
    'open models': {
      name: 'open models',
      meaning: 'Visible area of open 3D models, which are named beside it.',
    },
    'common practice': { name: 'common practice', meaning: 'What painters usually do; no source.' },
    'from memory': {
      name: 'from memory',
      meaning: 'An educated guess; no source is known. Your own value is better.',
    },
  } satisfies Record<Mark, { readonly name: string; readonly meaning: string }>,
  /** One of it, and several. */
  containers: {
    dropper: ['dropper', 'droppers'],
    pot: ['pot', 'pots'],
    tube: ['tube', 'tubes'],
    can: ['can', 'cans'],
  } satisfies Record<Container, readonly [one: string, many: string]>,
  whom: { army: 'For this army', shelf: 'For the shelf' },
  nothingToBuy: (isUnmet: boolean): string =>
    isUnmet ? 'No shop in your sheets has what is missing.' : 'Nothing to buy.',
  noShop: 'Without a shop',
  /** Beside a box of the list to buy, for who can't see it. */
  bought: (offer: string): string => `Bought: ${offer}`,

  /** The end of a list that is cut short. */
  rest: (count: number): string => `${count} more`,
  under: (number: string): string => `under ${number}`,
  over: (number: string): string => `over ${number}`,
  /** At the foot of every page. */
  made: 'Made by Halfpot from your own sheets. Nothing here was sent anywhere.',
  atLeast: (sum: string): string => `at least ${sum}`,
  unpriced: 'unpriced',
  range: (low: string, high: string): string => `${low} to ${high}`,
  lowHigh: 'one time in ten less, one time in ten more',
  some: (some: string, of: string): string => `${some} of ${of}`,
  same: 'the same',
  more: (by: string): string => `${by} more`,
  less: (by: string): string => `${by} less`,
  /** A doubt about the pots of a paint. */
  reading: (paint: string): string => `reading of ${paint}`,

  nothingLeft: 'Everything is painted: no paint is needed any more.',
  nothingNeeded: 'This army needs no paint.',

  proofs: {
    army: {
      all: 'Proved: no order that covers these amounts costs less. Every mix of pots, sets and shops was weighed, postage included.',
      rest: 'No order that covers this rest costs less: that is proved.',
    },
    shelf: {
      all: 'Proved: beside the order for the army, nothing that fills these pots up costs less.',
      rest: 'Beside the order for the army, nothing that covers this rest costs less: that is proved.',
    },
  },
  /** Of a proved order that may not be the one in the fewest shops and pots. */
  tiesOpen:
    'Time ran out before all orders at this cost were compared: another may take fewer shops or pots.',
  notProved: (above: string): string =>
    `Not proved to be the cheapest: it costs at most ${above} above the best possible.`,
  provedOrNot: (isProved: boolean): string => (isProved ? 'proved' : 'not proved'),
  searchLonger: 'Plan again with more time to search, such as --seconds 60.',
  unmet: 'The offers do not cover everything: what they lack is listed, the rest is ordered.',
  /** After what an order reaches. */
  butUnmet: ', but for paint that no offer covers',

  differences: {
    unseen: 'not seen',
    hardly: 'hardly seen',
    visible: 'just visible',
    plain: 'plainly different',
    other: 'another colour',
    meaning: (visible: string, plain: number, other: number): string =>
      'Differences are CIEDE2000, a published formula, between the hex colours of your sheets. What they look like is from ' +
      `memory: below 1 nobody sees one, from ${visible} on it is just visible, from ${plain} plainly different, ` +
      `from ${other} another colour.`,
  },
};
