// What a painter may get wrong with the ledger: each command's words, whole, and whether it writes. Others stand with their commands.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { makeFolder, runHalfpot } from './run-halfpot.js';

const root = makeFolder();
const day = ['--date', '2026-03-01'];
const header = 'date,paint,what,left,size ml,pots,shop';
/** As a plan writes it, of a shop. */
const orderAt = (shop: string, paint: string): string =>
  [
    'for,entry,shop,offer,paint,size ml,container,pots in all,how many,price,cost,currency,code,covers ml,left over ml,missing ml,needed,plan of,note',
    `army,pot,${shop},one,${paint},17,pot,1,1,2.90,2.90,EUR,,1,1,,0.7,,`,
    'army,total,,,,,,,,,2.90,EUR,,,,,,2026-02-28,',
    '',
  ].join('\n');
const lists: Readonly<Record<string, string>> = {
  'ours.list': orderAt('Lock Stores', 'brick red'),
  'theirs.list': orderAt('Lock Stores', 'marsh blue'),
  'mill.list': orderAt('The Mill', 'brick red'),
};

interface Fault {
  readonly files?: Readonly<Record<string, string>>;
  /** Run before, all of them right. */
  readonly before?: readonly (readonly string[])[];
  readonly command: readonly string[];
  readonly code: number;
  readonly err: string;
  /** Rows more in the log afterwards. */
  readonly rows?: number;
}

let made = 0;
function runFault({ files = {}, before = [], command }: Fault) {
  const dir = join(root, String(made++));
  const folder = join(dir, 'north');
  mkdirSync(folder, { recursive: true });
  writeSheets(folder, { ...fourShortSheets, 'shops.csv': 'shop\nLock Stores\n', ...files });
  for (const [name, text] of Object.entries(lists)) writeFileSync(join(dir, name), text);
  const run = ([name = '', ...args]: readonly string[]) => runHalfpot([name, 'north', ...args], { cwd: dir });
  for (const one of before) expect(run(one)).toMatchObject({ code: 0, err: '' });
  const rowsNow = (): number => {
    const log = join(folder, 'log.csv');
    return existsSync(log) ? readFileSync(log, 'utf8').trimEnd().split('\n').length - 1 : 0;
  };
  const rows = rowsNow();
  const { code, err } = run(command);
  return { code, err, rows: rowsNow() - rows };
}

const faults: Readonly<Record<string, Fault>> = {
  'an arrival before what was bought': {
    before: [['bought', 'ours.list', '--date', '2026-03-05']],
    command: ['arrived', '--date', '2026-03-04'],
    code: 0,
    err: 'warning: log.csv: more arrived than was bought: 0 on the way. Write the row with bought before it, with its day, size and shop; until then it brings no more than that.\n',
    rows: 1,
  },
  'an arrival that a log of two days has in the wrong order': {
    files: {
      'log.csv': `${header}\n2026-03-01,brick red,arrived,,17,1,\n2026-03-02,brick red,bought,,17,1,\n`,
    },
    command: ['arrived', ...day],
    code: 0,
    err: 'warning: log.csv: more arrived than was bought: 0 on the way. Write the row with bought before it, with its day, size and shop; until then it brings no more than that.\n',
    rows: 1,
  },
  'an arrival from a shop that sends nothing': {
    before: [['bought', 'ours.list', ...day]],
    command: ['arrived', '--shop', 'mill', ...day],
    code: 2,
    err: 'halfpot: Nothing is on its way from mill. Write halfpot bought first.\n',
  },
  'a list of another army': {
    command: ['bought', 'theirs.list', ...day],
    code: 1,
    err: 'error: --paint: no sheet of yours knows the paint "marsh blue". Add it to the pots, paints or offers sheet.\nNothing was written.\n',
  },
  'a list from a shop that no sheet knows': {
    command: ['bought', 'mill.list', ...day],
    code: 0,
    err: 'warning: --shop: no sheet of yours knows the shop "The Mill". It counts all the same.\n',
    rows: 1,
  },
  'nothing to take back, of arrived': {
    command: ['arrived', '--undo'],
    code: 2,
    err: 'halfpot: The log has nothing arrived that could be taken back.\n',
  },
  'nothing to take back, of count': {
    before: [['log', '--paint', 'brick', '--used', '1', ...day]],
    command: ['count', '--undo'],
    code: 2,
    err: 'halfpot: The log has nothing counted that could be taken back.\n',
  },
  'more left than the pot holds': {
    command: ['count', '--paint', 'brick', '--left', '17.1 ml', ...day],
    code: 1,
    err: 'error: --left: "17.1 ml" is more than the whole pot, 17 ml. Check both numbers.\nNothing was written.\n',
  },
  'more left than all of it': {
    command: ['count', '--paint', 'brick', '--left', '101%', ...day],
    code: 1,
    err: 'error: --left: "101%" is more than the whole. Write 100% at the most.\nNothing was written.\n',
  },
  'more pots than there are': {
    command: ['count', '--paint', 'brick', '--pots', '2', '--left', '40%', ...day],
    code: 0,
    rows: 1,
    err: 'warning: --pots: on that day so many do not stand on the shelf: 1. Check paint, size and day, and whether what was bought has arrived.\n',
  },
  'pots below zero': {
    command: ['count', '--paint', 'brick', '--pots', '-1', ...day],
    code: 1,
    err: 'error: --pots: "-1" is below zero, and a number of pots never is. Write it without the minus sign.\nNothing was written.\n',
  },
  'figures that are none': {
    command: ['log', '--paint', 'brick', '--unit', 'first', '--step', '1', '--figures', '0', ...day],
    code: 1,
    err: 'error: --figures: "0" is zero, and a number of figures never is. Write the true value, or take the row out.\nNothing was written.\n',
  },
  'more left than at the count before': {
    before: [['count', '--paint', 'brick', '--left', '40%', ...day]],
    command: ['count', '--paint', 'brick', '--left', '91%', '--date', '2026-03-02'],
    code: 0,
    err: 'warning: --left: there is more in the pot, 91%, than at the count before, 6.8 ml. The later count holds; check both, and whether a pot was bought.\n',
    rows: 1,
  },
  'a day to come, of bought': {
    files: { 'settings.csv': 'name,value\ndate,2026-03-01\n' },
    command: ['bought', 'ours.list', '--date', '2026-03-02'],
    code: 0,
    err: 'warning: --date: "2026-03-02" lies after 2026-03-01, the day of this plan. Check the year and the day.\n',
    rows: 1,
  },
  'a day to come, of count': {
    files: { 'settings.csv': 'name,value\ndate,2026-03-01\n' },
    command: ['count', '--paint', 'brick', '--left', '40%', '--date', '2062-03-01'],
    code: 0,
    err: 'warning: --date: "2062-03-01" lies after 2026-03-01, the day of this plan. Check the year and the day.\n',
    rows: 1,
  },
  'a day that is none': {
    before: [['bought', 'ours.list', ...day]],
    command: ['arrived', '--date', '2026-02-30'],
    code: 2,
    err: 'halfpot: "2026-02-30" is not a day. Write --date as 2026-03-14.\n',
  },
};

describe('told in these words', () => {
  it.each(Object.entries(faults))('%s', (_, fault) => {
    const { code, err, rows = 0 } = fault;
    expect(runFault(fault)).toEqual({ code, err, rows });
  });
});
