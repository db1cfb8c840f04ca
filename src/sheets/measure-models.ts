// Sheets: model files by themselves, as one figure. In: their paths. Out: their surface in plain numbers, or problems.
import { basename } from 'node:path';
import { type MeasuredModel, type MeasuredPiece, type Reached, reachedOf } from '../model/measured.js';
import type { Problem } from '../model/problem.js';
import { type ProblemCode, problem } from '../problems/catalogue.js';
import { checkModel } from './check/check-model.js';
import { makeNameBook } from './check/keep-names.js';
import type { ModelFile } from './model-file.js';
import { measureFile } from './read/models/measure-file.js';

/** Areas in cm2, heights in mm of the print. */
export interface MeasuredFigure {
  readonly files: readonly (Pick<MeasuredModel, 'triangles' | 'flat' | 'up'> & {
    readonly name: string;
    readonly highMm: number;
  })[];
  /** Of one side, without what lies on the ground. */
  readonly surfaceCm2: number;
  readonly reached: Reached;
  /** What is reached of each part by its name, in the order of the files; '' has none. */
  readonly parts: readonly { readonly part: string; readonly cm2: number }[];
}

interface Asked {
  /** How high the print of the first file is; undefined: as it says. */
  readonly highMm: number | undefined;
  /** In hundredths: so much of its sky has to be free for a place to be reached. */
  readonly leastSky: number;
}

export interface MeasuredFiles {
  /** Undefined where one of the problems is an error. */
  readonly figure: MeasuredFigure | undefined;
  readonly problems: readonly Problem<ProblemCode>[];
}

const hints: Partial<Record<ProblemCode, string>> = {
  'model-missing': 'Name a file that is there.',
  'model-unit': 'Give the height of the printed model in millimetres, such as --high 34.',
};

/** Each file once, wherever it lies. */
export async function measureModels(
  paths: readonly string[],
  { highMm, leastSky }: Asked,
): Promise<MeasuredFiles> {
  const files = new Map<string, ModelFile>();
  for (const path of paths) files.set(path, files.get(path) ?? (await measureFile(path)));
  const problems: Problem<ProblemCode>[] = [];
  const row = { model: paths, modelHighMm: highMm, eyeMm: undefined, base: undefined };
  const model = checkModel(row, {
    files,
    parts: makeNameBook(),
    blame: (code, _, { found = '', expected } = {}) => {
      const hint = hints[code];
      const words = { found: basename(found), ...(expected === undefined ? {} : { expected }) };
      problems.push(
        problem(code, { file: basename(found) }, { ...words, ...(hint === undefined ? {} : { hint }) }),
      );
    },
  });
  if (model === undefined) return { figure: undefined, problems };
  const measured = paths.map((path) => [basename(path), files.get(path)] as const);
  const [first] = measured;
  const scale = highMm === undefined ? 1 : highMm / mmOf(first?.[1]);
  return { figure: { ...sumUp(model.pieces, leastSky), files: describe(measured, scale) }, problems };
}

function describe(measured: readonly (readonly [string, ModelFile | undefined])[], scale: number) {
  return measured.flatMap(([name, file]) => {
    if (file === undefined || !('model' in file)) return [];
    const { triangles, flat, up } = file.model;
    return [{ name, triangles, flat, up, highMm: mmOf(file) * scale }];
  });
}

const mmOf = (file: ModelFile | undefined): number =>
  file !== undefined && 'model' in file ? file.model.high * (file.model.unitMm ?? 1) : 1;

function sumUp(pieces: readonly MeasuredPiece[], leastSky: number) {
  const names = [...new Set(pieces.map(({ part }) => part))];
  return {
    surfaceCm2: pieces.reduce((sum, { area, isSole }) => sum + (isSole ? 0 : area), 0),
    reached: reachedOf(pieces, leastSky),
    parts: names.map((name) => ({
      part: name,
      cm2: reachedOf(
        pieces.filter(({ part }) => part === name),
        leastSky,
      ).area,
    })),
  };
}
