// Report words: the English that more than one section says. In: words of the model's lists, numbers as text. Out: text.
import type { Mark } from '../../model/assumption.js';
import type { StockState } from '../../model/stock.js';
import type { Container, Layer, Method } from '../../model/words.js';

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
  methods: {
    brush: 'brush',
    flood: 'flood',
    drybrush: 'drybrush',
    sponge: 'sponge',
    spread: 'spread',
    airbrush: 'airbrush',
    'spray can': 'spray can',
  } satisfies Record<Method, string>,
  states: {
    'none owned': 'none owned',
    short: 'short',
    tight: 'tight',
    enough: 'enough',
  } satisfies Record<StockState, string>,
  marks: {
    weighed: 'weighed',
    yours: 'yours',
    published: 'published',
    'open models': 'open models',
    'common practice': 'common practice',
    'from memory': 'from memory',
  } satisfies Record<Mark, string>,
  /** One of it, and several. */
  containers: {
    dropper: ['dropper', 'droppers'],
    pot: ['pot', 'pots'],
    tube: ['tube', 'tubes'],
    can: ['can', 'cans'],
  } satisfies Record<Container, readonly [one: string, many: string]>,
  /** The end of a list that is cut short. */
  more: (count: number): string => `${count} more`,
};
