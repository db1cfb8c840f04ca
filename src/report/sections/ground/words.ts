// Ground: its English. In: results, ways to say numbers. Out: text.
import type { DefaultUsed } from '../../../model/sheets.js';
import { countOf, type NumberWords } from '../../words/word-numbers.js';

const labels = {
  sheets: 'How your sheets were read',
  lead: 'Every likely figure is worked out from the likely values below. One time in ten a value lies below its low, one in ten above its high; ranges and chances come from drawing all of them at once.',
  own: 'Write a name into the settings sheet to set your own value.',
  marks: 'Marks, strongest first',
  marksMeaning: 'A result bears its weakest input’s mark.',
  defaults: 'What blanks were taken for',
  defaultsCaption: 'What a blank cell was taken to mean',
  column: 'Sheet, column',
  blankIn: 'Blank in',
  takenAs: 'Taken as',
  assumptions: 'All values with their source',
  name: 'Name',
  low: 'low',
  likely: 'likely',
  high: 'high',
  drawn: 'Drawn',
  unit: 'unit',
  mark: 'mark',
  source: 'source',
};

export const groundWords = (say: NumberWords) => ({
  labels,
  /** What assumptions are about. */
  groups: {
    person: 'A person, made small',
    dress: 'Dress, build, kit',
    application: 'How paint goes on',
    layers: 'Layers, where a scheme says nothing',
    colours: 'Colours',
    time: 'How long it takes',
    pots: 'Pots, readings, weighings',
  },
  /** `questions`: warnings that are shown. */
  read: (questions: number): string =>
    questions === 0
      ? 'All of your sheets were read; no question is open.'
      : `All of your sheets were read; ${countOf(say, questions, 'question is', 'questions are')} open.`,
  column: ({ sheet, column }: DefaultUsed): string => `${sheet}, ${column}`,
  rows: (rows: number): string => countOf(say, rows, 'row'),
  learned: (mark: string, weighings: number): string => `${mark} (n = ${say.count(weighings)})`,
  /** Warnings that are not shown. */
  more: (warnings: number): string => `and ${warnings} more like the last`,
});
export type GroundWords = ReturnType<typeof groundWords>;
