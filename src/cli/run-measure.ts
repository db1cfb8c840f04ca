// Command line: `halfpot measure`. In: paths of model files. Out: what of them is painted, in words, an exit code.
import { basename } from 'node:path';
import { stderr, stdout } from 'node:process';
import { likenFigure, registry } from '../plan-army.js';
import { saysOf } from '../problems/catalogue.js';
import { encodeRows } from '../sheets/append/encode-row.js';
import { Mistake } from '../sheets/check/read-cell/cell-kind.js';
import { modelHeight } from '../sheets/check/read-cell/read-number.js';
import { measureModels } from '../sheets/measure-models.js';
import { exitCodes, UsageError } from './end-run.js';
import { showPlain } from './show-plain.js';
import { wordMeasured } from './word-measured.js';

export interface MeasureFlags {
  /** Height of the print in mm, as written. */
  readonly high?: string;
}

/** Gives 1 where a file cannot be measured; then nothing is said of the others. */
export async function runMeasure(paths: readonly string[], flags: MeasureFlags): Promise<number> {
  const highMm = flags.high === undefined ? undefined : readHigh(flags.high);
  const leastSky = registry.get('sky a brush needs')?.likely ?? 0;
  const { figure, problems } = await measureModels(paths, { highMm, leastSky });
  for (const one of problems) stderr.write(`${one.severity}: ${showPlain(`${saysOf(one)}. ${one.hint}`)}\n`);
  if (figure === undefined) return exitCodes.problems;
  const high = Math.max(...figure.files.map((file) => file.highMm));
  const lines = wordMeasured(figure, likenFigure(figure.reached.area, high, registry));
  stdout.write(`${lines.map(showPlain).join('\n')}\n${rowOf(paths, flags.high)}`);
  return exitCodes.done;
}

function readHigh(text: string): number {
  const high = modelHeight.read(text);
  if (high instanceof Mistake)
    throw new UsageError(`"${text}" is not the height of a print. Write --high as 34, in millimetres.`);
  return high;
}

/** As it may stand in figures.csv, with its header. */
function rowOf(paths: readonly string[], high: string | undefined): string {
  const names = paths.map((path) => basename(path));
  const figure = (names[0] ?? '').replace(/\.\w+$/, '');
  const cells = [
    ['figure', figure],
    ['model', names.join('; ')],
    ...(high === undefined ? [] : [['model high mm', high]]),
  ];
  const rows = [cells.map(([header = '']) => header), cells.map(([, cell = '']) => cell)];
  const shape = { encoding: 'utf-8', delimiter: ',', lineEnd: '\n', endsLine: true } as const;
  const bytes = encodeRows(rows, { ...shape, headers: [] });
  const text = bytes instanceof Uint8Array ? Buffer.from(bytes).toString().trimEnd() : '';
  const shown = text.split('\n').map((line) => `  ${showPlain(line)}\n`);
  return `Its row in figures, with the file beside that sheet:\n${shown.join('')}`;
}
