// `halfpot bought`, `arrived`, `count`, and evenings of `halfpot log`, as a painter types them.
import { once } from 'node:events';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { fourSheets, makeWorkbook } from '../sheets/read/make-files.js';
import { makeFolder, runHalfpot, startHalfpot } from './run-halfpot.js';

const root = makeFolder();
const day = ['--date', '2026-03-01'];

function folderWith(name: string, files: Readonly<Record<string, string>> = {}): string {
  const folder = join(root, name);
  mkdirSync(folder);
  writeSheets(folder, { ...fourShortSheets, ...files });
  return folder;
}

const offers = {
  'offers.csv':
    'shop,offer,price,paint,size ml\nThe Eel Trap,red and wash,7.00,brick red,17\nThe Eel Trap,red and wash,,earth wash,24\nLock Stores,red,2.90,brick red,12\n',
};
/** As a plan writes it: a set of two pots, three of another shop, and what is in no shop. */
const order = `\ufefffor,entry,shop,offer,paint,size ml,container,pots in all,how many,price,cost,currency,code,covers ml,left over ml,missing ml,needed,plan of,note
army,pot,The Eel Trap,red and wash,brick red,17,pot,1,1,7.00,7.00,EUR,,1,1,,0.7,,
army,pot,The Eel Trap,red and wash,earth wash,24,pot,1,,,,,,1,1,,,,
army,goods,The Eel Trap,,,,,,,,7.00,EUR,,,,,,,
army,postage,The Eel Trap,,,,,,,,3.50,EUR,,,,,,,
army,pot,Lock Stores,red,brick red,12,pot,3,3,2.90,8.70,EUR,,1,1,,0.7,,
army,postage,Lock Stores,,,,,,,,0.00,EUR,,,,,,,
army,total,,,,,,,,,19.20,EUR,,,,,,2026-02-28,
army,without a shop,,,earth wash,24,pot,1,1,,,,,,,1,,,another like yours
`;

function ordered(name: string): { readonly folder: string; readonly list: string } {
  const folder = folderWith(name, offers);
  const list = join(root, `${name}.csv`);
  writeFileSync(list, order);
  return { folder, list };
}

/** Rows of the log without its header and without when they were written. */
const logOf = (folder: string, file = 'log.csv'): string[] =>
  readFileSync(join(folder, file), 'utf8')
    .trimEnd()
    .split('\n')
    .slice(1)
    .map((line) => line.replace(/[^,]*$/, ''));

const run = (...args: readonly string[]) => runHalfpot(args);

describe('an order', () => {
  it('is read as a plan has written it', () => {
    const folder = folderWith('planned', {
      'offers.csv': `shop,offer,price,paint,size ml\n${['brick red', 'earth wash'].map((paint) => `The Eel Trap,${paint},3,${paint},17`).join('\n')}\n`,
      'pots.csv': 'paint,size ml,left\nbrick red,17,empty\nearth wash,24,empty\n',
    });
    const out = join(root, 'planned-out');
    expect(run('plan', folder, '--out', out, ...day).code).toBe(0);
    const bought = run('bought', folder, join(out, 'reorder.csv'), ...day);
    expect([bought.code, bought.err]).toEqual([0, '']);
    expect(logOf(folder)).toHaveLength(2);
  });

  it('is bought in one line, arrives in one, and both are taken back in one', () => {
    const { folder, list } = ordered('order');
    // The set is shared by volume: 17 and 24 of 41 ml.
    const bought = [
      '2026-03-01,brick red,,,,,,,bought,,17,1,2.90,The Eel Trap,3.50,',
      '2026-03-01,earth wash,,,,,,,bought,,24,1,4.10,The Eel Trap,,',
      '2026-03-01,brick red,,,,,,,bought,,12,3,8.70,Lock Stores,,',
    ];
    const one = run('bought', folder, list, ...day);
    expect([one.code, one.err]).toEqual([0, '']);
    expect(one.out).toBe(
      `Written to ${join(folder, 'log.csv')}:
  date 2026-03-01, paint brick red, what bought, size ml 17, pots 1, price 2.90, shop The Eel Trap, postage 3.50
  date 2026-03-01, paint earth wash, what bought, size ml 24, pots 1, price 4.10, shop The Eel Trap
  date 2026-03-01, paint brick red, what bought, size ml 12, pots 3, price 8.70, shop Lock Stores
On the shelf now, usable:
  brick red: 16 ml in 1 pot, 49.8 ml on the way in 4
  earth wash: 22.6 ml in 1 pot, 22.6 ml on the way in 1
`,
    );
    expect(logOf(folder)).toEqual(bought);
    const some = run('arrived', folder, '--shop', 'lock', '--date', '2026-03-03');
    expect([some.code, some.err]).toEqual([0, '']);
    expect(some.out).toContain('brick red: 49.8 ml in 4 pots, 16 ml on the way in 1\n');
    expect(logOf(folder).slice(3)).toEqual(['2026-03-03,brick red,,,,,,,arrived,,12,3,,Lock Stores,,']);
    expect(run('arrived', folder, '--date', '2026-03-04').out).toContain('brick red: 65.8 ml in 5 pots\n');
    expect(run('arrived', folder, '--undo').out).toContain(
      'brick red: 49.8 ml in 4 pots, 16 ml on the way in 1\n',
    );
    expect(run('arrived', folder, '--undo').out).toContain(
      'brick red: 16 ml in 1 pot, 49.8 ml on the way in 4\n',
    );
    const back = run('bought', folder, '--undo');
    expect([back.code, back.err]).toEqual([0, '']);
    expect(back.out).toContain('brick red: 16 ml in 1 pot\n');
    expect(run('check', folder)).toMatchObject({ code: 0, err: '' });
    expect(run('bought', folder, '--undo')).toEqual({
      ...{ code: 2, out: '' },
      err: 'halfpot: The log has nothing bought that could be taken back.\n',
    });
  });

  it('that has arrived, all or some of it, is taken back only after its arrival is', () => {
    const { folder, list } = ordered('arrived');
    for (const args of [
      ['bought', folder, list, ...day],
      ['arrived', folder, '--shop', 'lock', ...day],
      ['log', folder, '--paint', 'brick red', '--used', '2', ...day],
    ])
      expect(run(...args).code).toBe(0);
    const before = logOf(folder);
    expect(run('bought', folder, '--undo')).toEqual({
      ...{ code: 2, out: '' },
      err: 'halfpot: What was bought on 2026-03-01 has arrived, all of it or some. Take that back first, with halfpot arrived --undo.\n',
    });
    expect(logOf(folder)).toEqual(before);
    // An order of the same, later, is still on its way.
    expect(run('bought', folder, list, '--again', ...day).code).toBe(0);
    expect(run('bought', folder, '--undo').code).toBe(0);
    expect(run('arrived', folder, '--undo').code).toBe(0);
    expect(run('bought', folder, '--undo').code).toBe(0);
  });

  it('that stands in the log already is asked about', () => {
    const { folder, list } = ordered('twice');
    expect(run('bought', folder, list, ...day).code).toBe(0);
    const again = run('bought', folder, list, ...day);
    expect([again.code, again.out, again.err]).toEqual([
      2,
      '',
      'halfpot: All of it stands in the log as bought on 2026-03-01. If you bought it once more, say --again.\n',
    ]);
    expect(run('bought', folder, list, '--again', ...day).out).toContain('99.6 ml on the way in 8');
  });

  it.each<[string, (list: string) => readonly string[], string]>([
    ['of a shop that is not in it', (list) => [list, '--shop', 'Mill'], 'has nothing to buy at Mill'],
    ['that is no reorder list', () => [join(root, 'none of it', 'pots.csv')], 'is not a reorder list'],
    ['that is not there', () => [join(root, 'nowhere.csv')], 'nowhere.csv'],
  ])('%s is not written', (name, args, says) => {
    const { folder, list } = ordered(name);
    if (!existsSync(join(root, 'none of it'))) folderWith('none of it');
    const { code, err } = run('bought', folder, ...args(list));
    expect(code).toBe(2);
    expect(err).toContain(says);
    expect(existsSync(join(folder, 'log.csv'))).toBe(false);
  });

  it('of another army is not written, and its paints are named', () => {
    const folder = folderWith('other army');
    const list = join(root, 'other army.csv');
    writeFileSync(list, order.replaceAll('brick red', 'marsh blue'));
    const { code, err } = run('bought', folder, list, ...day);
    expect(code).toBe(1);
    expect(err).toContain('error: --paint: no sheet of yours knows the paint "marsh blue".');
    expect(existsSync(join(folder, 'log.csv'))).toBe(false);
  });

  it('that is not on its way does not arrive', () => {
    const { folder } = ordered('nothing');
    expect(run('arrived', folder)).toEqual({
      ...{ code: 2, out: '' },
      err: 'halfpot: Nothing is on its way. Write halfpot bought first.\n',
    });
  });

  it('that the pots sheet calls ordered arrives too', () => {
    const folder = folderWith('by hand', {
      'pots.csv': 'paint,size ml,ordered\nbrick red,17,yes\nearth wash,24,\n',
    });
    expect(run('arrived', folder, ...day).out).toContain('brick red: 16 ml in 1 pot\n');
    expect(readFileSync(join(folder, 'pots.csv'), 'utf8')).toContain('brick red,17,yes');
  });
});

describe('a count', () => {
  it('of a name cut short says what the pot holds from then on', () => {
    const folder = folderWith('count');
    expect(run('count', folder, '--paint', 'b r', '--left', '40%', ...day)).toMatchObject({
      ...{ code: 0, err: '' },
      out: expect.stringContaining('brick red: 6.4 ml in 1 pot\n'),
    });
    expect(run('log', folder, '--paint', 'brick', '--used', '2', ...day).out).toContain(
      'brick red: 4.4 ml in 1 pot\n',
    );
    expect(run('count', folder, '--undo').out).toContain('brick red: 14 ml in 1 pot\n');
  });

  it('in grams needs the weight of the empty pot', () => {
    const folder = folderWith('grams', {
      'pots.csv': 'paint,size ml,left,empty g,density g/ml\nbrick red,17,,20,1.2\nearth wash,24,,,\n',
    });
    // 12 g over 1.2 g/ml, of which 0.94 is usable.
    expect(run('count', folder, '--paint', 'brick red', '--left', '32 g', ...day).out).toContain(
      'brick red: 9.4 ml in 1 pot\n',
    );
    const { err } = run('count', folder, '--paint', 'earth wash', '--left', '32 g', ...day);
    expect(err).toContain('nobody knows what the empty pot weighs, so this count is left out');
    expect(logOf(folder)).toHaveLength(1);
  });

  it('asks how many pots there are where several should be', () => {
    const folder = folderWith('several', {
      'pots.csv': 'paint,size ml\nbrick red,17\nbrick red,17\nearth wash,24\n',
    });
    const { code, err } = run('count', folder, '--paint', 'brick red', '--left', '40%', ...day);
    expect([code, err]).toEqual([
      2,
      'halfpot: There should be 2 pots of brick red. Say how many there are with --pots: --left is of the one in use, the others count as they were.\n',
    ]);
    const one = ['count', folder, '--paint', 'brick red', '--left', '40%', ...day];
    expect(run(...one, '--pots', '1').out).toContain('brick red: 6.4 ml in 1 pot\n');
  });

  it.each([
    [['--paint', 'brick red'], 'What was counted?'],
    [['--paint', 'e', '--left', '40'], '--left: "40" does not say of what'],
    [['--paint', 'brick red', '--left', '18 ml'], '--left: "18 ml" is more than the whole pot, 17 ml'],
    [['--paint', 'slate', '--left', '40%'], '--paint: no sheet of yours knows the paint "slate"'],
  ])('%j is not written', (args, says) => {
    const folder = folderWith(`count ${args.join('')}`);
    const { code, err } = run('count', folder, ...args, ...day);
    expect(code).not.toBe(0);
    expect(err).toContain(says);
    expect(existsSync(join(folder, 'log.csv'))).toBe(false);
  });

  it('of a name that two begin with is asked', () => {
    const pots = { 'pots.csv': 'paint,size ml\nbrick red,17\nbrick wash,17\nearth wash,24\n' };
    const { code, err } = run('count', folderWith('two', pots), '--paint', 'brick', '--left', '40%');
    expect([code, err]).toEqual([
      2,
      'halfpot: "brick" could be brick red or brick wash. Write more of it.\n',
    ]);
  });
});

describe('an evening', () => {
  it('takes the paints of its steps from the scheme, lowers the pots by the estimate, and is taken back', () => {
    const folder = folderWith('evening');
    const { code, err, out } = run(
      'log',
      folder,
      '--unit',
      'first',
      '--steps',
      '1-2',
      '--figures',
      '10',
      ...day,
    );
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/brick red: about 14 ml in 1 pot\n/);
    expect(logOf(folder)).toEqual([
      '2026-03-01,brick red,first spears,1,10,,,,,,,,,,,',
      '2026-03-01,earth wash,first spears,2,10,,,,,,,,,,,',
    ]);
    expect(run('check', folder)).toMatchObject({ code: 0, err: '' });
    expect(run('log', folder, '--undo').out).toContain('brick red: 16 ml in 1 pot\n');
    expect(run('log', folder, '--undo').err).toBe(
      'halfpot: The log has nothing used that could be taken back.\n',
    );
  });

  it('is of the whole unit where no figures are named, with the paint that is used instead', () => {
    const folder = folderWith('whole', { 'swaps.csv': 'paint,instead\nbrick red,earth wash\n' });
    expect(run('log', folder, '--unit', 'first spears', '--steps', '1', ...day).code).toBe(0);
    expect(logOf(folder)).toEqual(['2026-03-01,earth wash,first spears,1,20,,,,,,,,,,,']);
  });

  it('may be of steps here and there', () => {
    const lines = ['1,whole,base coat,brick red', '2,whole,wash,earth wash', '3,head,detail,brick red'];
    const folder = folderWith('here and there', {
      'schemes.csv': ['scheme,step,zone,layer,paint', ...lines.map((line) => `red line,${line}`), ''].join(
        '\n',
      ),
    });
    expect(run('log', folder, '--unit', 'first', '--steps', '1, 3', ...day)).toMatchObject({ code: 0 });
    expect(logOf(folder).map((row) => row.split(',')[3])).toEqual(['1', '3']);
  });

  it('leaves out what the figure does not have', () => {
    const folder = folderWith('no shield', {
      'schemes.csv':
        'scheme,step,zone,layer,paint\nred line,1,whole,base coat,brick red\nred line,2,round shield,base coat,earth wash\nred line,3,own,wash,earth wash\n',
      'zones.csv': 'zone,parts\nown,"round shield, head"\n',
    });
    expect(run('log', folder, '--unit', 'first', '--steps', '1-3', ...day)).toMatchObject({
      code: 0,
      err: '',
    });
    expect(logOf(folder).map((row) => row.split(',')[3])).toEqual(['1', '3']);
    expect(run('log', folder, '--unit', 'first', '--steps', '2', ...day)).toEqual({
      ...{ code: 2, out: '' },
      err: 'halfpot: first spears takes no paint in step 2. Its steps are 1, 3.\n',
    });
  });

  it.each([
    [['--steps', '1'], 'Of which unit?'],
    [['--unit', 'second', '--steps', '1'], 'No unit is "second"'],
    [['--unit', 'first', '--steps', '3-4'], 'first spears takes no paint in step 3-4. Its steps are 1, 2.'],
    [['--unit', 'first', '--steps', '2-1'], '"2-1" is no step'],
    [['--unit', 'first', '--steps', '1,'], '"1," is no step. Write --steps as 3, as 2-5, or as 2-5,8.'],
    [['--unit', 'first', '--steps', '1', '--used', '3'], 'so --used says nothing'],
  ])('%j is not written', (args, says) => {
    const folder = folderWith(`evening ${args.join('')}`);
    const { code, err } = run('log', folder, ...args);
    expect([code, err]).toEqual([2, expect.stringContaining(says)]);
    expect(existsSync(join(folder, 'log.csv'))).toBe(false);
  });
});

describe('a log that is older than these columns', () => {
  const log = 'date,paint,used ml\n2026-02-01,brick red,1\n';

  it('stays as it is: the program goes on in a file of its own, which is read with it and takes all that follows', () => {
    const folder = folderWith('older', { 'log.csv': log, 'shops.csv': 'shop\nLock Stores\n' });
    const use = ['log', folder, '--paint', 'brick red', '--used', '2', ...day];
    // For a use it has the columns.
    expect(run(...use).out).toContain(`Written to ${join(folder, 'log.csv')}:\n`);
    expect(run('log', folder, '--undo').out).toContain(`Written to ${join(folder, 'log 2.csv')}:\n`);
    expect(run('count', folder, '--paint', 'brick red', '--left', '40%', ...day).out).toContain(
      'brick red: 6.4 ml in 1 pot\n',
    );
    expect(run(...use).out).toContain(`Written to ${join(folder, 'log 2.csv')}:\n`);
    expect(readFileSync(join(folder, 'log.csv'), 'utf8')).toBe(`${log}2026-03-01,brick red,2\n`);
    expect(logOf(folder, 'log 2.csv')).toEqual([
      '2026-03-01,brick red,,,,,,2,not used,,,,,,,',
      '2026-03-01,brick red,,,,,,,counted,40%,,,,,,',
      '2026-03-01,brick red,,,,,,2,,,,,,,,',
    ]);
    expect(run('check', folder)).toMatchObject({ code: 0, err: '' });
    expect(run('log', folder, '--undo').out).toContain('brick red: 6.4 ml in 1 pot\n');
    expect(run('count', folder, '--undo').out).toContain('brick red: 15 ml in 1 pot\n');
    // What the painter wrote by hand is taken back too.
    expect(run('log', folder, '--undo').out).toContain('brick red: 16 ml in 1 pot\n');
    expect(run('log', folder, '--undo').err).toContain('nothing used that could be taken back');
  });

  it('may be that of a workbook, or stand in one among CSV sheets', async () => {
    const beside = join(root, 'beside');
    mkdirSync(beside);
    writeFileSync(join(beside, 'army.xlsx'), await makeWorkbook(fourSheets));
    writeFileSync(join(beside, 'log.csv'), log);
    const among = folderWith('among');
    writeFileSync(
      join(among, 'log.xlsx'),
      await makeWorkbook({
        log: [
          ['date', 'paint', 'used ml'],
          ['2026-02-01', 'brick red', 1],
        ],
      }),
    );
    for (const folder of [beside, among]) {
      const { code, err, out } = run('count', folder, '--paint', 'brick red', '--left', '40%', ...day);
      expect([code, err]).toEqual([0, '']);
      expect(out).toContain(`Written to ${join(folder, 'log 2.csv')}:\n`);
      expect(run('count', folder, '--undo').out).toContain('brick red: 15 ml in 1 pot\n');
    }
  });

  it('is told of where the program cannot go on in its own file either', () => {
    const folder = folderWith('own', { 'log 2.csv': log });
    const { code, err } = run('count', folder, '--paint', 'brick red', '--left', '40%', ...day);
    expect([code, err]).toEqual([
      2,
      'halfpot: log 2.csv has no columns for that. Write these behind the last of its header row, and try again: what, left\n',
    ]);
  });
});

describe('six at once', () => {
  it('leave the rows of each whole and together', async () => {
    const folder = folderWith('six', offers);
    const lists = Array.from({ length: 6 }, (_, at) => {
      const list = join(root, `six ${at}.csv`);
      writeFileSync(list, order.replaceAll(',pot,1,', `,pot,${at + 1},`));
      return list;
    });
    const runs = lists.map((list) => startHalfpot(['bought', folder, list, '--again', ...day]));
    await Promise.all(runs.map((one) => once(one, 'close')));
    expect(runs.map(({ exitCode }) => exitCode)).toEqual(runs.map(() => 0));
    const rows = logOf(folder);
    expect(rows).toHaveLength(18);
    const together = Array.from({ length: 6 }, (_, at) => rows.slice(3 * at, 3 * at + 3).join('\n'));
    const wanted = Array.from({ length: 6 }, (_, at) =>
      [
        `2026-03-01,brick red,,,,,,,bought,,17,${at + 1},2.90,The Eel Trap,3.50,`,
        `2026-03-01,earth wash,,,,,,,bought,,24,${at + 1},4.10,The Eel Trap,,`,
        '2026-03-01,brick red,,,,,,,bought,,12,3,8.70,Lock Stores,,',
      ].join('\n'),
    );
    expect(together.sort()).toEqual(wanted.sort());
  });

  it('and killed at any moment leave no part of a row, and all that was said to be written', async () => {
    const folder = folderWith('killed', offers);
    const list = join(root, 'killed.csv');
    writeFileSync(list, order);
    let said = 0;
    for (let at = 0; at < 12; at += 1) {
      const one = startHalfpot(['bought', folder, list, '--again', ...day]);
      one.stdout?.on('data', (chunk: Buffer) => {
        if (chunk.toString().includes('Written')) said += 1;
      });
      setTimeout(() => one.kill('SIGKILL'), 100 + at * 60);
      await once(one, 'close');
    }
    const rows = existsSync(join(folder, 'log.csv')) ? logOf(folder) : [];
    expect(rows.length % 3).toBe(0);
    expect(rows.length / 3).toBeGreaterThanOrEqual(said);
    expect(
      rows.filter(
        (row) => !/^2026-03-01,[a-z ]+,{7}bought,,\d+,\d,\d\.\d\d,[A-Za-z ]+,(?:3\.50)?,$/.test(row),
      ),
    ).toEqual([]);
  });
});
