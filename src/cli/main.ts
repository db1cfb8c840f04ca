#!/usr/bin/env node
// Command line: flags in, an exit code out. Each command is loaded only when it is called, so that help comes at once.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { argv, stderr, stdout } from 'node:process';
import { Command, CommanderError } from 'commander';
import { defineLog, definePots } from './define-ledger.js';
import { exitCodes, reportCrash } from './end-run.js';
import { collect, example, once, sheetsSays, usualFolder } from './flags.js';
import { nameFault } from './name-fault.js';
import type { CheckFlags } from './run-check.js';
import type { CompareFlags } from './run-compare.js';
import type { MeasureFlags } from './run-measure.js';
import type { PlanFlags } from './run-plan.js';

/** By the word that calls it, how each command is defined; `called` alone, if it is one of them: each takes half a millisecond. */
function defineCommands(called: string | undefined): Command {
  const program = new Command('halfpot')
    .description('Will my pots last this army? Paint, cost and reorder list from the sheets you keep.')
    .version(readVersion(), '-v, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand(false)
    .showHelpAfterError('(halfpot --help lists what there is.)')
    .exitOverride()
    .addHelpText(
      'after',
      `${example('plan my-army', 'plans the sheets in my-army; halfpot start my-army writes some to begin with')}

halfpot plan --help, and so on, says more about one command.
Exit codes: 0 done, 1 problems in the sheets, 2 wrong usage or an unexpected error.`,
    );
  const defined =
    called !== undefined && Object.hasOwn(commands, called) ? { [called]: commands[called] } : commands;
  for (const define of new Set(Object.values(defined))) define?.(program);
  return program;
}

const commands: Readonly<Record<string, (program: Command) => void>> = {
  start: defineStart,
  check: defineCheck,
  plan: definePlan,
  compare: defineCompare,
  log: defineLog,
  bought: definePots,
  arrived: definePots,
  count: definePots,
  measure: defineMeasure,
};

function defineStart(program: Command): void {
  program
    .command('start')
    .description('write starter sheets to fill in; beside sheets of yours, those that are missing')
    .argument('<folder>', 'where they go; made if it is not there')
    .option('--workbook', 'one workbook with dropdowns instead of CSV files')
    .addHelpText('after', example('start my-army', 'writes twelve small sheets into the new folder my-army'))
    .action(async (folder: string, options: { workbook?: true }) => {
      const { runStart } = await import('./run-start.js');
      await runStart(folder, options);
    });
}

function defineCheck(program: Command): void {
  program
    .command('check')
    .description('say what is wrong in the sheets, and what was found')
    .argument('[sheets]', sheetsSays, '.')
    .option('--write-columns', 'write what your headers were taken for into columns.csv, to be mended')
    .addHelpText('after', example('check my-army', 'names every cell that can not be read'))
    .action(async (sheets: string, flags: CheckFlags) => {
      const { runCheck } = await import('./run-check.js');
      process.exitCode = await runCheck(sheets, flags);
    });
}

function definePlan(program: Command): void {
  program
    .command('plan')
    .description('plan the army: report, reorder list, estimate, plan.json')
    .argument(
      '[armies...]',
      `${sheetsSays}; several armies are planned from one shelf, the first named first`,
    )
    .option('--shelf <folder>', 'where the pots, offers, shops and log of all of them stand', once)
    .option('--out <folder>', `where the files go (default: ${usualFolder} in the current folder)`, once)
    .option('--date <day>', 'plan as of this day, written 2026-03-14', once)
    .option('--budget <sum>', 'say what this much cash finishes', once)
    .option('--buy <way>', 'what to buy at once: goes, what is worth it now, or likely (default: goes)', once)
    .option(
      '--sure <percent>',
      'instead so much that nothing runs out in so many of 100 cases: 50 to 99',
      once,
    )
    .option('--until <unit>', 'plan as far as this unit, or so many figures, by priority', once)
    .option('--without <offer>', 'as if "Shop: offer" were sold out; may be given again and again', collect)
    .option('--seconds <time>', 'how long to search for orders in all, counted as work (default: 25)', once)
    .option('--json', 'print plan.json and nothing else; files only with --out')
    .option('--open', 'open the report when it is written')
    .addHelpText(
      'after',
      example(
        'plan my-army --out my-report --budget 60',
        'plans the sheets in my-army and says what 60 finishes; the report is my-report/report.html',
      ),
    )
    .action(async (armies: string[], options: Omit<PlanFlags, 'usualFolder'>) => {
      const { runPlan } = await import('./run-plan.js');
      process.exitCode = await runPlan(armies.length === 0 ? ['.'] : armies, { ...options, usualFolder });
    });
}

function defineCompare(program: Command): void {
  program
    .command('compare')
    .description('put two plans side by side: compare.html, compare.json')
    .argument('<a>', 'sheets, or a folder that plan has written')
    .argument('[b]', 'the same of the other')
    .option('--with <sheet=file>', 'the other is A with this CSV file as that sheet; for each sheet', collect)
    .option('--out <folder>', 'where the files go (default: halfpot-compare in the current folder)', once)
    .option('--date <day>', 'plan as of this day, written 2026-03-14', once)
    .option(
      '--seconds <time>',
      'how long to search for orders in each plan, counted as work (default: 25)',
      once,
    )
    .addHelpText(
      'after',
      example('compare my-report my-army', 'says what has changed since that plan was made'),
    )
    .action(async (a: string, b: string | undefined, flags: CompareFlags) => {
      const { runCompare } = await import('./run-compare.js');
      process.exitCode = await runCompare(a, b, flags);
    });
}

function defineMeasure(program: Command): void {
  program
    .command('measure')
    .description('say what of a model file a brush reaches, and the row to write')
    .argument('<files...>', 'STL, OBJ or 3MF files of one figure, without supports')
    .option('--high <mm>', 'how high the print is, where the file does not say; of several files, the first')
    .addHelpText(
      'after',
      example('measure spearman.stl', 'prints its area, its parts, and its row for the figures sheet'),
    )
    .action(async (files: string[], flags: MeasureFlags) => {
      const { runMeasure } = await import('./run-measure.js');
      process.exitCode = await runMeasure(files, flags);
    });
}

function readVersion(): string {
  const written: unknown = JSON.parse(readFileSync(join(import.meta.dirname, '../../package.json'), 'utf8'));
  const known = typeof written === 'object' && written !== null && 'version' in written;
  return known ? String(written.version) : 'unknown';
}

/** A reader such as `head` may hang up early; that is no error of ours. */
stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? undefined : reportCrash(nameFault(error, 'the console')));
});
// Who does not listen to what is wrong will still read the exit code.
stderr.on('error', () => undefined);

async function run(): Promise<void> {
  try {
    await defineCommands(argv[2]).parseAsync(argv);
  } catch (error) {
    // commander has already said what was wrong, or printed the help that was asked for.
    if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : exitCodes.usage;
    else process.exitCode = reportCrash(error);
  }
}

void run();
