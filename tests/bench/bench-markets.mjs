// Bench: plans in large markets, whole programs, one run each. As a program: `npm run bench:markets`; sizes as paints x
// offers x shops may follow. Out: a table of seconds, also over those of the sample, which comes first; peak memory; and how far above the
// best its promises may lie.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { argv } from 'node:process';
import { fileURLToPath } from 'node:url';
import { drawFrom, drawMarket } from '../order/draw-market.mjs';
import { marketSheets } from '../order/market-sheets.mjs';
import { measureOnce, medianMs } from './measure-runs.mjs';
import { promiseGaps } from './promise-gaps.mjs';

const main = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
const usualSizes = [
  '20x60x3',
  '30x90x4',
  '36x60x3',
  '40x120x4',
  '60x180x5',
  '100x300x5',
  '300x900x5',
  '1000x3000x5',
  '3000x9000x10',
  '5000x15000x10',
  '24x12000x100',
  '24x60000x300',
];
const sizes = argv.length > 2 ? argv.slice(2) : usualSizes;
const folder = mkdtempSync(join(tmpdir(), 'halfpot-markets-'));

/** Sheets of a market, and of an army in which each paint is one step: 20 figures, 900 steps to a scheme. */
function writeSheets(into, size) {
  const [paints, offers, shops] = size.split('x').map(Number);
  const market = drawMarket(paints, { paints, offers, shops });
  const { whole } = drawFrom(paints + 1);
  const names = Array.from({ length: paints }, (_, at) => `paint ${at}`);
  const hex = () => whole(0, 0xffffff).toString(16).padStart(6, '0');
  const schemes = Array.from({ length: Math.ceil(paints / 900) }, (_, at) =>
    names.slice(900 * at, 900 * (at + 1)),
  );
  const sheets = {
    settings: ['name,value', 'currency,EUR', 'locale,en'],
    paints: ['paint,kind,hex,opacity', ...names.map((name) => `${name},colour,#${hex()},fair`)],
    pots: [
      'paint,size ml,left',
      ...names.slice(0, Math.ceil(paints / 3)).map((name) => `${name},17,${whole(5, 95)}%`),
    ],
    figures: ['figure,eye mm', 'spearman,28'],
    schemes: [
      'scheme,step,zone,layer,paint',
      ...schemes.flatMap((held, at) =>
        held.map((name, step) => `scheme ${at},${step + 1},whole,base coat,${name}`),
      ),
    ],
    army: ['unit,figure,scheme,count', ...schemes.map((_, at) => `unit ${at},spearman,scheme ${at},20`)],
  };
  mkdirSync(into);
  for (const [name, rows] of Object.entries(sheets))
    writeFileSync(join(into, `${name}.csv`), `${rows.join('\n')}\n`);
  for (const [name, text] of Object.entries(marketSheets(market))) writeFileSync(join(into, name), text);
}

const planTo = (out, sheets) => [main, 'plan', sheets, '--out', out];

function benchPlan(name, sheets, sampleMs) {
  const out = join(folder, `${name}-plan`);
  const { ms, peakMb } = measureOnce(planTo(out, sheets));
  const [seconds, ratio] = [(ms / 1000).toFixed(1), (ms / sampleMs).toFixed(1)];
  const cells = [name.replaceAll('x', ' x '), seconds, ratio, peakMb.toFixed(0), promiseGaps(out).join(', ')];
  console.log(`| ${cells.join(' | ')} |`);
}

try {
  console.log('| paints x offers x shops | plan s | of the sample | peak MB | promises above the best, % |');
  console.log('| --- | --- | --- | --- | --- |');
  const sample = fileURLToPath(new URL('../../sample-data/low-sluice', import.meta.url));
  const { plan: sampleMs } = medianMs({ plan: planTo(join(folder, 'plan'), sample) }, 5);
  benchPlan('sample', sample, sampleMs);
  for (const size of sizes) {
    const sheets = join(folder, size);
    writeSheets(sheets, size);
    benchPlan(size, sheets, sampleMs);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
