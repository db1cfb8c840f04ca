// What a case of one problem code is, and the smallest right folder of sheets that cases spoil on purpose.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';

export interface ProblemCase {
  readonly code: string;
  readonly make: (dir: string) => void | Promise<void>;
  /** What to read; default the folder itself. */
  readonly path?: (dir: string) => string;
  /** The exact sentence(s) that wordProblem gives for this code. */
  readonly says: readonly string[];
}

/** The least that can be planned, by file name: no problem and no warning. */
export const fourShortSheets: Readonly<Record<string, string>> = {
  'pots.csv': 'paint,size ml\nbrick red,17\nearth wash,24\n',
  'figures.csv': 'figure,eye mm\nspearman,28\n',
  'schemes.csv':
    'scheme,step,zone,layer,paint\nred line,1,whole,base coat,brick red\nred line,2,whole,wash,earth wash\n',
  'army.csv': 'unit,figure,count\nfirst spears,spearman,20\n',
};

/** Writes files by name into a folder that exists. */
export function writeSheets(dir: string, files: Readonly<Record<string, string | Uint8Array>>): void {
  for (const [name, text] of Object.entries(files)) writeFileSync(join(dir, name), text);
}
