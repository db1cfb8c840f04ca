import { expect, it } from 'vitest';
import { usualMethod } from '../../../src/assumptions/layers.js';
import { layers } from '../../../src/model/words.js';
import { sprayedLayers } from '../../../src/sheets/check/question-sprays.js';

it('the layers that are questioned are those that a blank method leaves to the spray can', () => {
  expect(layers.filter((layer) => usualMethod(layer) === 'spray can')).toEqual(sprayedLayers);
});
