// Names inside sentences: fenced off only where they would turn the text around them.
import { expect, it } from 'vitest';
import { viewPlan } from '../../../src/report/page/view.js';
import { nameOf } from '../../../src/report/words/word-name.js';
import { smallPlan } from '../a-small-plan.js';
import { renameAll } from '../page/rename-all.js';

it.each([
  ['Nettle coat', 'Nettle coat'],
  ['Grünspan 漆', 'Grünspan 漆'],
  ['ירוק', '\u2068ירוק\u2069'],
  ['أخضر 17', '\u2068أخضر 17\u2069'],
  ['tail\u202e', '\u2068tail\u202e\u2069'],
])('%s', (name, inSentence) => expect(nameOf(name)).toBe(inSentence));

it('keeps the numbers behind a name in place, wherever a sentence names paints or shops', () => {
  const { answer, costs, use, palette } = viewPlan(renameAll(smallPlan, '\u202e'), []);
  const sentences = [
    ...answer.figures.map(({ detail }) => detail),
    costs.unpriced,
    ...use.notPainted,
    palette.says,
  ];
  for (const sentence of sentences) {
    const opened = sentence.split('\u202e').length - 1;
    expect(sentence.split('\u202e\u2069').length - 1).toBe(opened);
    expect(opened).toBeGreaterThan(0);
  }
});
