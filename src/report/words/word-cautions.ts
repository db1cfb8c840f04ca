// Cautions: their English, common practice of safe work. In: nothing. Out: text.
import type { Caution } from '../../model/plan.js';

export interface CautionBlock {
  readonly about: string;
  readonly says: readonly string[];
}

const blocks: Readonly<Record<Caution, CautionBlock>> = {
  'spray can': {
    about: 'Spray can',
    says: [
      'Spray outdoors or with good ventilation, and let the figures dry where nobody sits.',
      'No flames, no sparks, no smoking, no hot surfaces nearby: gas and mist catch fire.',
      'Wear breathing protection that is made for paint mist and solvent vapour.',
      'Keep cans away from heat and sun, also empty ones; never pierce or burn them.',
    ],
  },
  airbrush: {
    about: 'Airbrush',
    says: [
      'The mist is finer than it looks: ventilate, or spray into an extracting booth.',
      'Wear breathing protection that is made for paint mist, with water-based paint too.',
      'No flames or sparks nearby where anything but water thins or cleans.',
    ],
  },
  solvent: {
    about: 'Solvents',
    says: [
      'Ventilate, and keep flames, sparks and heat away from open jars and wet rags.',
      'Close jars at once, keep them off skin and eyes, and out of reach of children.',
      'Rags with solvent or oil can heat up by themselves: dry them spread out, outdoors.',
    ],
  },
  glue: {
    about: 'Glues',
    says: [
      'Ventilate: the vapour of superglue stings, and that of plastic cement catches fire. No flames or sparks nearby.',
      'Superglue joins skin and eyelids in seconds, and cotton or wool makes it hot: wear eye protection.',
      'Close tubes and jars at once, and keep them out of reach of children.',
    ],
  },
  brush: {
    about: 'Brush',
    says: [
      'Never point a brush with your lips: pigment and medium do not belong in the mouth.',
      'Anything but water thins or cleans by its label: it may be a solvent.',
    ],
  },
};

export const cautionWords = {
  labels: {
    heading: 'Before you start',
    lead: 'For what this plan uses. Labels, safety data sheets and local rules come first.',
  },
  blocks,
};
export type CautionWords = typeof cautionWords;
