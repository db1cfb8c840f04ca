// Command line: the commands that write to the ledger. In: the program. Out: the same with them; each is loaded when it is called.
import type { Command } from 'commander';
import { example, once, sheetsSays, usualFolder } from './flags.js';
import type { LogFlags } from './run-log.js';
import type { ArrivedFlags, BoughtFlags, CountFlags } from './run-pots.js';

const shelfSays = 'where pots and log stand, if the sheets are those of one army on it';
const undoSays = 'take back what this command wrote last';

export function defineLog(program: Command): void {
  program
    .command('log')
    .description('write down what was used or painted, in log.csv beside the sheets')
    .argument('[sheets]', sheetsSays, '.')
    .option('--paint <name>', 'the paint used; a name may be cut short where one alone begins so', once)
    .option('--unit <name>', 'the unit worked on', once)
    .option('--step <number>', 'the step worked on', once)
    .option('--steps <range>', 'all paints of the steps 2-5 or 2-5,8 of the unit', once)
    .option('--figures <number>', 'how many figures have had this paint in this step', once)
    .option('--before <grams>', 'what the pot weighed before', once)
    .option('--after <grams>', 'what it weighs now', once)
    .option('--used <ml>', 'what was used, where the pot was not weighed', once)
    .option('--date <day>', 'the day of the work, written 2026-03-14 (default: today)', once)
    .option('--shelf <folder>', shelfSays, once)
    .option('--undo', undoSays)
    .addHelpText(
      'after',
      example(
        'log my-army --paint "Oat" --unit "first scouts" --step 2 --figures 10 --before 31.2 --after 30.1',
        'writes that ten scouts took 1.1 g of Oat',
      ),
    )
    .action(async (sheets: string, flags: LogFlags) => {
      const { runLog } = await import('./run-log.js');
      process.exitCode = await runLog(sheets, flags);
    });
}

export function definePots(program: Command): void {
  const define = (name: string, says: string, shown: string): Command =>
    program
      .command(name)
      .description(says)
      .argument('[sheets]', sheetsSays, '.')
      .option('--date <day>', 'the day, written 2026-03-14 (default: today)', once)
      .option('--shelf <folder>', shelfSays, once)
      .option('--undo', undoSays)
      .addHelpText('after', shown);
  define(
    'bought',
    'write down that an order was placed: its pots are on their way',
    example('bought my-army my-report/reorder.csv', 'takes what that plan lists as bought'),
  )
    .argument('[order]', 'the reorder.csv of a plan', `${usualFolder}/reorder.csv`)
    .option('--shop <name>', 'only what is bought there', once)
    .option('--again', 'also where the log has all of it already')
    .action(async (sheets: string, order: string, flags: BoughtFlags) => {
      const { runBought } = await import('./run-pots.js');
      process.exitCode = await runBought(sheets, order, flags);
    });
  define(
    'arrived',
    'write down that what was bought stands on the shelf',
    example('arrived my-army', 'puts all that is on its way on the shelf'),
  )
    .option('--shop <name>', 'only what was bought there', once)
    .action(async (sheets: string, flags: ArrivedFlags) => {
      const { runArrived } = await import('./run-pots.js');
      process.exitCode = await runArrived(sheets, flags);
    });
  define(
    'count',
    'write down what is left in a pot; in a terminal, without --paint, asks for each',
    example('count my-army --paint Oat --pots 1 --left 40%', 'writes that one pot of Oat is there, at 40 %'),
  )
    .option('--paint <name>', 'the paint that was counted', once)
    .option('--left <amount>', 'what is left in the pot in use: 40%, 7.5 ml, 31.2 g', once)
    .option('--size <ml>', 'which pot, where there are pots of several sizes', once)
    .option('--pots <number>', 'how many pots there are', once)
    .action(async (sheets: string, flags: CountFlags) => {
      const { runCount } = await import('./run-pots.js');
      process.exitCode = await runCount(sheets, flags);
    });
}
