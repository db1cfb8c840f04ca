// Problems: words for the model files of figures.
import type { Wording } from './wording.js';

const saveAnew = 'Save it anew as STL, OBJ or 3MF from the program that made it.';

export const modelProblems = {
  'model-missing': {
    severity: 'error',
    says: 'there is no file "{found}"',
    hint: 'Put it beside the sheets, or write its name as it is.',
  },
  'model-outside': {
    severity: 'error',
    says: '"{found}" lies outside the folder of the sheets',
    hint: 'Copy the file beside them, and write its name alone.',
  },
  'model-type': {
    severity: 'error',
    says: '"{found}" is not the name of a model file',
    hint: 'Write the name of an STL, OBJ or 3MF file, with its ending.',
  },
  'model-unreadable': {
    severity: 'error',
    says: '"{found}" cannot be opened ({expected})',
    hint: 'See that you may read it, and that no other program holds it.',
  },
  'model-broken': {
    severity: 'error',
    says: '"{found}" cannot be measured: {expected}',
    hint: saveAnew,
  },
  'model-too-large': {
    severity: 'error',
    says: '"{found}" is too large to measure: {expected} is the most',
    hint: 'Let a program for models reduce its triangles, or write the area of the figure into area cm2.',
  },
  'model-unit': {
    severity: 'error',
    says: '"{found}" is {expected} high in its file, which can hardly be millimetres',
    hint: 'Write the height of the printed model into model high mm.',
  },
  'model-unreal': {
    severity: 'warning',
    says: '"{found}" was measured without some of its triangles ({expected}), whose corners are no numbers',
    hint: saveAnew,
  },
  'model-inside-out': {
    severity: 'warning',
    says: 'the surface of "{found}" faces inwards; it was measured as if it faced outwards',
    hint: 'If the figure is right, leave it as it is.',
  },
  'model-has-base': {
    severity: 'warning',
    says: '"{found}" is left aside, as the model has a base of its own',
    hint: 'Leave this cell blank, or take the base out of the file.',
  },
  'model-and-area': {
    severity: 'warning',
    says: 'the area "{found}" is taken, and not that of the model',
    hint: 'Leave this cell blank to have the area of the model.',
  },
  'high-without-model': {
    severity: 'warning',
    says: '"{found}" counts for nothing, as this figure has no model',
    hint: 'Write the name of its file into model, or leave this cell blank.',
  },
} as const satisfies Record<string, Wording>;
