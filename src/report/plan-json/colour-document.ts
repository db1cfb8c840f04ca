// Report view: what plan.json tells of colours: coats, undercoats, primers, swaps, substitutes, cash against colour. In:
// nothing. Out: schemas for plan-document.ts.
import { z } from 'zod';
import {
  atLeast,
  cash,
  cost,
  group,
  layer,
  list,
  ml,
  number,
  rows,
  share,
  text,
  whole,
  yesNo,
} from './document-fields.js';

const dE00 = number('Colour difference, CIEDE2000; 0 and more.');
const maybeDE00 = number('Colour difference, CIEDE2000; null without hex on both.').nullable();

const mix = (says: string) =>
  rows(says, { paint: text('Name of the paint.'), share: share('Its share of the mix.') });

export const coatsBecause = group(
  'Why so many coats; left out where the scheme or the layer says how many.',
  {
    under: list(z.string(), 'Names of the paints beneath that ask for the most coats; several are a mix.'),
    dE00,
    coatOpacity: share(
      'What one coat hides, thinned and mixed as it is; left out for a metallic over a pale colour, which takes one.',
    ).optional(),
    better: group('An owned paint over which fewer coats would do; left out where there is none.', {
      undercoat: text('Name of the paint.'),
      coats: whole('Coats over it.'),
    }).optional(),
  },
);

export const undercoat = z.object({
  scheme: text('Name of the scheme.'),
  step: whole('Number of the step.'),
  zone: text('What is painted.'),
  layer,
  over: mix('The paints on top.'),
  under: mix('What they lie on now.'),
  undercoat: text('What would lie beneath them.'),
  undercoatCoats: whole('Coats of it.'),
  coatsWithout: whole('Coats on top now.'),
  coatsWith: whole('Coats on top, with the undercoat beneath.'),
  figures: whole('Figures still to be painted that it serves.'),
  coatsSaved: whole('Fewer with it in all, its own counted.'),
  mlSaved: number('Millilitres of all paints together; below 0 where it takes more.'),
  minutesSaved: number('Brush minutes on all those figures.'),
});

export const primer = z.object({
  paint: text('Name of the primer.'),
  best: yesNo('True for the best of those with a colour, and for each that ties with it.'),
  owned: yesNo('True where a pot of it is on the shelf or on its way.'),
  inUse: yesNo('True where a scheme in use has it.'),
  hasColour: yesNo('Without a colour the coats over it are the usual ones, and comparing it says little.'),
  coats: number('Coats of the whole scheme on every figure.'),
  ml: ml('The whole scheme on every figure.'),
  useCost: cost('Cost of use of the same, extras included.'),
  atLeast,
  minutes: number('Brush minutes of the same, likely.'),
});

export const swap = z.object({
  scheme: text('Name of the scheme.'),
  steps: list(z.int(), 'The steps that it changes.'),
  paint: text('What the scheme names.'),
  by: text('What goes on.'),
  dE00: maybeDE00,
});

export const substitute = z.object({
  paint: text('The paint to buy.'),
  toBuyMl: ml('What is missing of it.'),
  by: text('An owned paint that may stand in for it.'),
  sameByName: yesNo('True where their names say that both are one colour.'),
  dE00: maybeDE00,
  spareMl: ml('What the army leaves over of the other.'),
});

const choice = {
  dE00: number('The largest colour difference allowed, CIEDE2000.'),
  cash: cash('Goods and postage.'),
  pots: whole('Pots bought.'),
  status: z
    .enum(['proved', 'not proved', "can't be met"])
    .describe('As that of the order; here for every choice of paints within the difference.'),
  aboveBest: cash('At most this much above the best possible choice; 0 where proved.'),
  swaps: rows('Needs that another paint serves.', {
    paint: text('The paint asked for.'),
    by: text('What serves its whole need.'),
    dE00,
  }),
  unmet: rows('What no paint within the difference can serve.', {
    paint: text('Name of the paint.'),
    ml: ml('What is missing.'),
  }),
};

export const frontierPoint = z.object(choice);

export const fewestPots = z.object({
  ...choice,
  abovePots: whole('At most so many pots above the fewest; 0: proved.'),
});
