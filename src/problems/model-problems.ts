// Problems: words for the model files of figures.
import { error, warning } from './wording.js';

const saveAnew = 'Save it anew as STL, OBJ or 3MF from the program that made it.';

export const modelProblems = {
  'model-missing': error(
    'there is no file "{found}"',
    'Put it beside the sheets, or write its name as it is.',
  ),
  'model-outside': error(
    '"{found}" lies outside the folder of the sheets',
    'Copy the file beside them, and write its name alone.',
  ),
  'model-type': error(
    '"{found}" is not the name of a model file',
    'Write the name of an STL, OBJ or 3MF file, with its ending.',
  ),
  'model-unreadable': error(
    '"{found}" cannot be opened ({expected})',
    'See that you may read it, and that no other program holds it.',
  ),
  'model-broken': error('"{found}" cannot be measured: {expected}', saveAnew),
  'model-too-large': error(
    '"{found}" is too large to measure: {expected} is the most',
    'Let a program for models reduce its triangles, or write the area of the figure into area cm2.',
  ),
  'model-unit': error(
    '"{found}" is {expected} high in its file, which can hardly be millimetres',
    'Write the height of the printed model into model high mm.',
  ),
  'model-unreal': warning(
    '"{found}" was measured without some of its triangles ({expected}), whose corners are no numbers',
    saveAnew,
  ),
  'model-inside-out': warning(
    'the surface of "{found}" faces inwards; it was measured as if it faced outwards',
    'If the figure is right, leave it as it is.',
  ),
  'model-has-base': warning(
    '"{found}" is left aside, as the model has a base of its own',
    'Leave this cell blank, or take the base out of the file.',
  ),
  'model-and-area': warning(
    'the area "{found}" is taken, and not that of the model',
    'Leave this cell blank to have the area of the model.',
  ),
  'high-without-model': warning(
    '"{found}" counts for nothing, as this figure has no model',
    'Write the name of its file into model, or leave this cell blank.',
  ),
};
