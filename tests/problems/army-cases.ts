// Cases of codes about several armies and their shelf: folders beside each other, and the exact words. `north` is read first.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fourShortSheets, writeSheets } from './problem-case.js';

export interface ArmiesCase {
  readonly code: string;
  readonly make: (dir: string) => void;
  readonly armies: readonly string[];
  readonly shelf?: string;
  readonly says: readonly string[];
}

type Files = Readonly<Record<string, string>>;

const south: Files = { ...fourShortSheets, 'army.csv': 'unit,figure,count\nsecond spears,spearman,5\n' };

/** Two armies whose sheets are right together, with these files added or written over. */
export function makeArmies(dir: string, folders: Readonly<Record<string, Files>>): void {
  const all: Readonly<Record<string, Files>> = {
    north: fourShortSheets,
    south: { ...south, 'pots.csv': 'paint,size ml\nbrick red,12\n' },
  };
  for (const name of new Set([...Object.keys(all), ...Object.keys(folders)])) {
    mkdirSync(join(dir, name));
    writeSheets(join(dir, name), { ...all[name], ...folders[name] });
  }
}

const two = ['north', 'south'];
const settings = (rows: string): Files => ({ 'settings.csv': `name,value\n${rows}\n` });

export const armyCases: readonly ArmiesCase[] = [
  {
    code: 'army-on-shelf',
    make: (dir) =>
      makeArmies(dir, {
        shelf: {
          ...fourShortSheets,
          'army.csv': 'unit,figure,count\nmill mob,spearman,5\n,spearman,5\n',
          'log.csv':
            'date,paint,unit,step,figures,used ml\n2026-03-01,brick red,Mill Mob,1,5,\n2026-03-02,brick red,second spears,1,5,1\n',
          'swaps.csv': 'unit,paint,instead\nmill mob,brick red,earth wash\n',
        },
      }),
    armies: two,
    shelf: 'shelf',
    says: [
      'shelf/army.csv: this stands on a shelf, which has no army of its own. Move it into a folder with its figures and schemes, and plan that folder.',
    ],
  },
  {
    code: 'two-shelves',
    make: (dir) =>
      makeArmies(dir, {
        north: settings('shelf,../attic'),
        attic: { 'pots.csv': 'paint,size ml\nearth wash,24\n' },
      }),
    armies: two,
    shelf: 'cellar',
    says: [
      'north/settings.csv row 2: the shelf is "../attic" here, and cellar otherwise. Armies that are planned together share one shelf: name the same in each, or in one alone.',
    ],
  },
  {
    code: 'names-of-armies-differ',
    make: (dir) =>
      makeArmies(dir, {
        south: {
          'schemes.csv':
            'scheme,step,zone,layer,paint\nRed line,1,whole,base coat,earth wash\nred line,2,whole,wash,earth wash\n',
        },
      }),
    armies: two,
    says: [
      'south/schemes.csv row 2, "scheme" (A2): "Red line" is not as it is in north. Write the same in both, or give one of them another name.',
    ],
  },
  {
    code: 'settings-of-armies-differ',
    make: (dir) => makeArmies(dir, { north: settings('currency,EUR'), south: settings('currency,SEK') }),
    armies: two,
    says: [
      'south/settings.csv row 2, "name" (A2): "currency" has another value in north. Armies that are planned together share their settings: write the same in both, or in one alone.',
    ],
  },
  {
    code: 'unit-of-two-armies',
    make: (dir) => makeArmies(dir, { south: { 'army.csv': 'unit,figure,count\nFirst spears,spearman,5\n' } }),
    armies: two,
    says: [
      'south/army.csv row 2, "unit" (A2): "First spears" is a unit of north too. They are kept apart: each is called by its name and, in brackets, its army.',
    ],
  },
];
