// Problems: words for several armies and their shelf.
import type { Wording } from './wording.js';

export const armyProblems = {
  'army-on-shelf': {
    severity: 'error',
    says: 'this stands on a shelf, which has no army of its own',
    hint: 'Move it into a folder with its figures and schemes, and plan that folder.',
  },
  'two-shelves': {
    severity: 'error',
    says: 'the shelf is "{found}" here, and {expected} otherwise',
    hint: 'Armies that are planned together share one shelf: name the same in each, or in one alone.',
  },
  'names-of-armies-differ': {
    severity: 'error',
    says: '"{found}" is not as it is in {expected}',
    hint: 'Write the same in both, or give one of them another name.',
  },
  'settings-of-armies-differ': {
    severity: 'error',
    says: '"{found}" has another value in {expected}',
    hint: 'Armies that are planned together share their settings: write the same in both, or in one alone.',
  },
  'unit-of-two-armies': {
    severity: 'warning',
    says: '"{found}" is a unit of {expected} too',
    hint: 'They are kept apart: each is called by its name and, in brackets, its army.',
  },
} as const satisfies Record<string, Wording>;
