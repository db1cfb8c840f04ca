// Bench: whole programs against their floors, as ratios within one run. Prints Markdown tables. `npm run bench`, or
// `npm run bench -- 1000 10000` for other army sizes; not part of the tests, since times depend on the machine.
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { argv, version } from 'node:process';
import { benchColours } from './bench-colour.mjs';
import { benchFrontier } from './bench-frontier.mjs';
import { benchLargeOrders, benchProofs, benchSampleOrder } from './bench-order.mjs';
import { benchDraws, benchGrowth, benchSampleRanges } from './bench-ranges.mjs';
import { benchWorkbook } from './bench-workbook.mjs';
import { makeArmy } from './make-army.mjs';
import { medianMs, peakMb } from './measure-runs.mjs';
import { promiseGaps } from './promise-gaps.mjs';

const sample = 'sample-data/low-sluice';
const main = 'dist/cli/main.js';
/** The program without its start, which keeps compiled code. */
const afresh = 'dist/program/main.js';
const sizes = argv.length > 2 ? argv.slice(2).map(Number) : [50, 200, 1_000, 10_000, 100_000];
const folder = mkdtempSync(join(tmpdir(), 'halfpot-bench-'));

const table = (header, rows) =>
  [header, header.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
const times = (ratio) => `${ratio.toFixed(2)} x`;
const against = (ratio, most) => `${times(ratio)} ${ratio < most ? '(met)' : '(MISSED)'}`;

function benchCommands() {
  const ms = medianMs(
    {
      bare: ['-e', '0'],
      imports: ['tests/bench/import-only.mjs'],
      help: [main, '--help'],
      check: [main, 'check', sample],
      afresh: [afresh, 'check', sample],
      plan: [main, 'plan', sample, '--out', join(folder, 'sample')],
    },
    9,
  );
  const row = (what, name, target) => [
    what,
    ms[name].toFixed(0),
    times(ms[name] / ms.bare),
    times(ms[name] / ms.imports),
    target,
  ];
  return table(
    ['program', 'ms', 'of bare Node', 'of imports alone', 'target'],
    [
      row('`node -e 0`', 'bare', ''),
      row('imports alone', 'imports', ''),
      row('`halfpot --help`', 'help', `< 1.6 x bare Node: ${against(ms.help / ms.bare, 1.6)}`),
      row('`halfpot check` (sample)', 'check', `< 1.5 x bare Node: ${against(ms.check / ms.bare, 1.5)}`),
      row('the same, no compiled code kept', 'afresh', ''),
      row('`halfpot plan` (sample)', 'plan', `< 7 x bare Node: ${against(ms.plan / ms.bare, 7)}`),
    ],
  );
}

const percent = (share) => `${(100 * share).toFixed(1)} %`;
const range = (values, digits, unit) =>
  `${Math.min(...values).toFixed(digits)} to ${Math.max(...values).toFixed(digits)} ${unit}`;

async function benchOrders() {
  const proofs = await benchProofs();
  const gaps = (await benchLargeOrders()).map((gap) => 100 * gap);
  const sampleMs = benchSampleOrder();
  const frontier = await benchFrontier();
  const slowest = Math.max(...frontier.seconds);
  const coloursMs = await benchColours();
  return table(
    ['order', 'seen', 'target'],
    [
      ['300 paints, 440 offers, 5 shops: to proof, 12 seeds', range(proofs.seconds, 2, 's'), ''],
      [
        'the same, over the bare solver on the same matrix',
        percent(proofs.overhead),
        `< 10 %: ${proofs.overhead < 0.1 ? '(met)' : '(MISSED)'}`,
      ],
      [
        'the first plan above the optimum, median and worst',
        `${percent(proofs.firstGap)}, ${percent(proofs.worstFirstGap)}`,
        '',
      ],
      [
        '600 paints, 1,000 offers, 28 % sets: gap after 10 s of work, 4 seeds',
        range(gaps, 1, '%'),
        `< 1 %: ${Math.max(...gaps) < 1 ? '(met)' : '(MISSED)'}`,
      ],
      [
        'the sample: order proved, in a fresh process',
        `${sampleMs.order.toFixed(0)} ms`,
        `< 150 ms: ${sampleMs.order < 150 ? '(met)' : '(MISSED)'}`,
      ],
      ["the same with its reasons and the shelf's order", `${sampleMs.step.toFixed(0)} ms`, ''],
      ['the staircase after it', `${sampleMs.stairs.toFixed(0)} ms`, ''],
      [
        'cash against colour: 60 needs x 200 paints, four differences and the fewest pots, 6 seeds',
        range(frontier.seconds, 1, 's'),
        `< 2 s: ${slowest < 2 ? '(met)' : '(MISSED)'}`,
      ],
      [
        '2,000 owned paints within reach of 500 needs',
        `${coloursMs.toFixed(0)} ms`,
        `< 100 ms: ${coloursMs < 100 ? '(met)' : '(MISSED)'}`,
      ],
      [
        'of the points of cash against colour, proved; the widest gap of the others',
        `${frontier.proved} of ${frontier.points}; ${percent(frontier.worstGap)}`,
        `< 2 %: ${frontier.worstGap < 0.02 ? '(met)' : '(MISSED)'}`,
      ],
    ],
  );
}

function benchRanges() {
  const { ratio, groups } = benchDraws();
  const growth = benchGrowth();
  const ms = benchSampleRanges();
  const steps = (ratios) => ratios.map(times).join(', ');
  const parts = `${ms.draw.toFixed(0)} drawing twice, ${ms.sum.toFixed(0)} summing up`;
  return table(
    ['ranges', 'seen', 'target'],
    [
      [
        `10,000 draws of 500 units x 20 steps, over a bare loop on its ${groups} groups of lines`,
        times(ratio),
        `< 1.5 x: ${against(ratio, 1.5)}`,
      ],
      ['1,000 to 10,000 to 100,000 draws: the time', steps(growth.draws), ''],
      ['1,000 to 10,000 to 100,000 lines: the time', steps(growth.lines), ''],
      [
        `the sample, once and cold, without the searches: ${parts}`,
        `${ms.all.toFixed(0)} ms`,
        `< 100 ms: ${ms.all < 100 ? '(met)' : '(MISSED)'}`,
      ],
    ],
  );
}

async function benchReading(rows) {
  const { ms, oursMb, theirsMb } = await benchWorkbook({ folder, sample, rows });
  const whole = ms.ours / ms.theirs;
  const reading = (ms.ours - ms.oursImport) / (ms.theirs - ms.theirsImport);
  const shown = (all, imports) => `${all.toFixed(0)} (${imports.toFixed(0)})`;
  return table(
    [
      'workbook rows',
      'ours ms (import)',
      'exceljs ms (import)',
      'ours / exceljs',
      'the same without imports',
      'ours peak MB',
      'exceljs peak MB',
    ],
    [
      [
        rows.toLocaleString('en'),
        shown(ms.ours, ms.oursImport),
        shown(ms.theirs, ms.theirsImport),
        times(whole),
        `< 1.2 x: ${against(reading, 1.2)}`,
        oursMb.toFixed(0),
        theirsMb.toFixed(0),
      ],
    ],
  );
}

function benchArmy(rows) {
  const sheets = join(folder, `army-${rows}`);
  const [planOut, floorOut] = [`${sheets}-plan`, `${sheets}-floor`];
  makeArmy({ sample, folder: sheets, rows });
  const plan = [main, 'plan', sheets, '--out', planOut];
  const floor = ['tests/bench/floor.mjs', sheets, floorOut, planOut];
  const ms = medianMs({ plan, floor }, rows > 20_000 ? 3 : 5);
  const written = readdirSync(planOut).reduce((bytes, name) => bytes + statSync(join(planOut, name)).size, 0);
  const gaps = promiseGaps(planOut).join(', ');
  return { rows, ...ms, gaps, writtenMb: written / 2 ** 20, planMb: peakMb(plan), floorMb: peakMb(floor) };
}

function tableOfArmies(armies) {
  const last = armies.at(-1);
  return table(
    [
      'army rows',
      'plan ms',
      'floor ms',
      'plan / floor',
      'written MB',
      'plan peak MB',
      'floor peak MB',
      'growth',
      'promises above the best, %',
    ],
    armies.map((army, index) => {
      const ratio = army.plan / army.floor;
      const before = armies[index - 1];
      return [
        army.rows.toLocaleString('en'),
        army.plan.toFixed(0),
        army.floor.toFixed(0),
        army === last ? `< 3 x: ${against(ratio, 3)}` : times(ratio),
        army.writtenMb.toFixed(1),
        army.planMb.toFixed(0),
        army.floorMb.toFixed(0),
        before === undefined
          ? ''
          : `${times(army.plan / before.plan)} the time for ${times(army.rows / before.rows)} the rows`,
        army.gaps,
      ];
    }),
  );
}

try {
  console.log(`Node ${version}, medians of alternating runs.\n`);
  console.log(`${benchCommands()}\n`);
  console.log(`${await benchOrders()}\n`);
  console.log(`${benchRanges()}\n`);
  console.log(`${await benchReading(Math.max(...sizes))}\n`);
  console.log(tableOfArmies(sizes.map(benchArmy)));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
