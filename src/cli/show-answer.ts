// Command line: the answer. In: what opens the report, its cautions, the files written. Out: words on the
// console.
import { stdout } from 'node:process';
import type { ReportView } from '../report/page/view.js';
import { showPlain } from './show-plain.js';

/** Question, figure and detail of each, evenings, what to do next, which cautions there are to read, then where the files are. */
export function showAnswer(
  { answer, cautions, more }: Pick<ReportView, 'answer' | 'cautions' | 'more'>,
  files: readonly string[],
): void {
  const told = answer.figures.map(({ question, figure, detail }) =>
    [question, `  ${figure}`, `  ${detail}`].map(showUnfenced).join('\n'),
  );
  const { evenings, next } = answer;
  const ahead = [evenings, next === undefined ? '' : `${next.label} ${next.says}`]
    .filter((line) => line !== '')
    .map((line) => `\n\n${showUnfenced(line)}`);
  const named = cautions?.blocks.map(({ about }) => about).join(', ');
  const take = named === undefined ? '' : `\n\nCautions in the report: ${named}.`;
  const lines = more.length === 0 ? '' : `\n\n${more.join('\n')}`;
  stdout.write(
    `${told.join('\n\n')}${ahead.join('')}${take}${lines}\n\nWritten:\n${files.map(showPlain).join('\n')}\n`,
  );
}

/** The report fences names off with isolating marks (U+2068, U+2069), which a terminal has no use for. */
const showUnfenced = (text: string): string => showPlain(text.replace(/[\u2068\u2069]/g, ''));
