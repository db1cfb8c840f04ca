// Problems: words for several armies and their shelf.
import { error, warning } from './wording.js';

export const armyProblems = {
  'army-on-shelf': error(
    'this stands on a shelf, which has no army of its own',
    'Move it into a folder with its figures and schemes, and plan that folder.',
  ),
  'two-shelves': error(
    'the shelf is "{found}" here, and {expected} otherwise',
    'Armies that are planned together share one shelf: name the same in each, or in one alone.',
  ),
  'names-of-armies-differ': error(
    '"{found}" is not as it is in {expected}',
    'Write the same in both, or give one of them another name.',
  ),
  'settings-of-armies-differ': error(
    '"{found}" has another value in {expected}',
    'Armies that are planned together share their settings: write the same in both, or in one alone.',
  ),
  'unit-of-two-armies': warning(
    '"{found}" is a unit of {expected} too',
    'They are kept apart: each is called by its name and, in brackets, its army.',
  ),
};
