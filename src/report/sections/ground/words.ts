// Ground: its English. In: results, ways to say numbers. Out: text.
import type { DefaultUsed } from '../../../model/sheets.js';
import { countOf, type NumberWords } from '../../words/word-numbers.js';

const labels = {
  heading: 'What the numbers rest on',
  lead: 'Every likely figure in this report is worked out from the likely values below. Low and high say how far each of them may lie off: one time in ten it lies below the low, one in ten above the high. Ranges and chances come from drawing all of them at once, many times over.',
  own: 'Any of these can be replaced by your own value: write its name into the settings sheet.',
  marks: 'Marks, strongest first',
  marksMeaning:
    'A result bears the weakest mark among its inputs. The more broken the line under a mark, the weaker it is.',
  warnings: 'Questions about your sheets',
  defaults: 'Blanks that took their default',
  defaultsCaption: 'What a blank cell was taken to mean',
  column: 'Sheet, column',
  blankIn: 'Blank in',
  takenAs: 'Taken as',
  assumptions: 'Every assumption',
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
  column: ({ sheet, column }: DefaultUsed): string => `${sheet}, ${column}`,
  rows: (rows: number): string => countOf(say, rows, 'row'),
  learned: (mark: string, weighings: number): string => `${mark} (n = ${say.count(weighings)})`,
  /** Warnings that are not shown. */
  more: (warnings: number): string => `and ${warnings} more like the last`,
});
export type GroundWords = ReturnType<typeof groundWords>;
