// Bench: a ledger of any length. In: the sample's folder, how many rows. Out: a folder of the sample's sheets with such a log: pot
// after pot of each paint bought, arrived, used up, counted and thrown away.
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';

const header =
  'date,paint,unit,step,figures,before g,after g,used ml,what,left,size ml,pots,price,shop,postage,written';
/** Rows of one pot's life: a little less than twenty uses of half a millilitre in a pot of 17. */
const usesOfPot = 16;

const dayAfter = (days) => new Date(Date.UTC(2000, 0, 1) + days * 86_400_000).toISOString().slice(0, 10);

/**
 * Writes `rows` log rows into `folder`, all of them right.
 * @param {{ sample: string, folder: string, rows: number }} ledger
 */
export function makeLedger({ sample, folder, rows }) {
  cpSync(sample, folder, { recursive: true });
  const read = (name) =>
    Papa.parse(readFileSync(join(sample, name), 'utf8'), { header: true, skipEmptyLines: true }).data;
  const [{ shop }] = read('shops.csv');
  const [{ unit }] = read('army.csv');
  const paints = read('pots.csv').flatMap((row) => (row['size ml'] === '17' ? [row.paint] : []));
  const lines = [header];
  for (let pot = 0; lines.length <= rows; pot += 1) {
    const [paint, day] = [paints[pot % paints.length], dayAfter(pot)];
    const of = (what, cells) => `${day},${paint},,,,,,,${what},${cells},`;
    const used = Array.from({ length: usesOfPot }, () => `${day},${paint},${unit},,,,,0.5,,,,,,,,`);
    lines.push(
      of('bought', `,17,1,2.95,${shop},3.50`),
      of('arrived', `,17,1,,${shop},`),
      ...used,
      of('counted', '40%,17,1,,,'),
      of('thrown away', ',17,1,,,'),
    );
  }
  writeFileSync(join(folder, 'log.csv'), `${lines.slice(0, rows + 1).join('\n')}\n`);
}
