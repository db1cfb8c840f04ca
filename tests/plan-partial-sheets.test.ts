// Answers from some of the sheets: a shelf without an army, an army without pots.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { planArmy, registry } from '../src/plan-army.js';
import { renderReport } from '../src/report/page/render-report.js';
import { viewPlan } from '../src/report/page/view.js';
import { describePlan } from '../src/report/plan-json/describe-plan.js';
import { viewReorder } from '../src/report/reorder/view-reorder.js';
import { writeReorderCsv } from '../src/report/reorder/write-reorder-csv.js';
import { readSheets } from '../src/sheets/read-sheets.js';
import { fourShortSheets, writeSheets } from './problems/problem-case.js';

const today = '2026-11-02';
let dir = '';
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'halfpot-partial-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

async function planOf(files: Readonly<Record<string, string>>) {
  writeSheets(dir, files);
  const { sheets, problems } = await readSheets(dir, { assumptions: registry, today });
  if (sheets === undefined) throw new Error(JSON.stringify(problems));
  const plan = await planArmy(sheets, today, { draws: 500 });
  const view = viewPlan(plan, problems);
  return { plan, view, problems, page: await renderReport(view) };
}

const figuresOf = ({ answer }: Awaited<ReturnType<typeof planOf>>['view']) =>
  answer.figures.map(({ figure, detail }) =>
    [figure, detail].map((text) => text.replaceAll('\u00a0', ' ').replace(/[\u2068\u2069]/g, '')),
  );

/**
 * Usable is 0.94 of a pot. brick red 17 ml at 10 %: 17 x 0.1 x 0.94 = 1.598 ml, worth 0.1 x 2.00 = 0.20, below its level of
 * 5 ml. earth wash 50 ml at half: 50 x 0.5 x 0.94 = 23.5 ml, worth 0.5 x 6.00 = 3.00, above its level of 5 ml. In all 25.098 ml
 * and 3.20. One pot of 17 ml at 3.50 brings brick red back.
 */
const pots = 'paint,size ml,left,price,keep ml\nbrick red,17,10%,2.00,5\nearth wash,50,half,6.00,5\n';
const offers = 'shop,offer,price,paint,size ml\nQuay,brick,3.50,brick red,17\n';
const shops = 'shop,postage\nQuay,0\n';

describe('pots alone', () => {
  it('are counted, priced and held against their levels', async () => {
    const { plan, view, problems } = await planOf({ 'pots.csv': pots });
    expect(problems).toEqual([]);
    expect(plan.lacking).toEqual(['army', 'offers']);
    expect(plan.summary.shelf.haveMl).toBeCloseTo(25.098, 9);
    expect(plan.summary.shelf.worth.exactMinor.toNumber()).toBeCloseTo(320, 9);
    expect(figuresOf(view)).toEqual([
      ['25 ml', 'So much can be got out of 2 pots of 2 paints.'],
      ['€3.20', 'At the prices paid, by what is left.'],
      ['1 paint', 'brick red. Without a shop: 1 pot, €2.00.'],
    ]);
    expect(view.title).toBe('Paint on the shelf');
    expect(view.pots.groups.map(({ title, paints }) => [title, ...paints.map(({ paint }) => paint)])).toEqual(
      [
        ['Below their keep level', 'brick red'],
        ['Above their keep level', 'earth wash'],
      ],
    );
  });

  it('make a page without sections about an army, which says what would bring them', async () => {
    const { view, page } = await planOf({ 'pots.csv': pots });
    for (const id of ['costs', 'use', 'weigh', 'stairs', 'time'])
      expect(page).not.toContain(`<section id="${id}"`);
    expect(page).toContain('<section id="pots"');
    expect(view.more).toHaveLength(2);
    for (const line of view.more) expect(page).toContain(line);
    expect(page.replace(/<style>.*?<\/style>|<script>.*?<\/script>/gs, '')).not.toMatch(
      /this army|the army is/,
    );
    expect(view.answer.trust.mark).toBe('from memory');
  });

  it('with offers are restocked', async () => {
    const { plan, view } = await planOf({ 'pots.csv': pots, 'offers.csv': offers, 'shops.csv': shops });
    expect(plan.restock?.lines.map(({ count }) => count)).toEqual([1]);
    expect(figuresOf(view)[2]).toEqual(['1 paint', 'brick red. Restocking costs €3.50, with postage.']);
    expect(view.more).toHaveLength(1);
  });

  it('are listed to reorder for the shelf alone', async () => {
    const { plan, problems } = await planOf({ 'pots.csv': pots, 'offers.csv': offers, 'shops.csv': shops });
    const rows = writeReorderCsv(viewReorder(plan)).split('\r\n').slice(1);
    expect(rows.map((row) => row.split(',').slice(0, 2).join(' ')).filter(Boolean)).toEqual([
      ...['shelf pot', 'shelf goods', 'shelf postage', 'shelf shop total', 'shelf total'],
    ]);
    const { lacking, shelf, army, restock } = describePlan(plan, problems);
    expect({ lacking, shelf, figures: army.figures, total: restock?.total }).toEqual({
      lacking: ['army'],
      shelf: { pots: 2, paints: 2, haveMl: 25.098, worth: '3.200000', atLeast: false, unpriced: 0 },
      figures: 0,
      total: '3.50',
    });
  });

  it('that are all above their levels ask for nothing', async () => {
    const { view } = await planOf({ 'pots.csv': 'paint,size ml,price\nbrick red,17,2.00\n' });
    expect(figuresOf(view)[2]).toEqual(['Nothing', 'Each paint reaches its keep level.']);
  });

  it('without prices say how to price them', async () => {
    const { view } = await planOf({ 'pots.csv': 'paint,size ml\nbrick red,17\n' });
    expect(figuresOf(view)[1]?.[0]).toBe('No prices yet');
  });
});

describe('an army without pots', () => {
  const { 'pots.csv': _, ...army } = fourShortSheets;

  it('is reckoned from scratch, and its schemes name the paints', async () => {
    const { plan, view, problems, page } = await planOf(army);
    expect(problems).toEqual([]);
    expect(plan.lacking).toEqual(['pots', 'offers']);
    expect(plan.stock.map(({ paint, haveMl }) => [paint, haveMl])).toEqual([
      ['brick red', 0],
      ['earth wash', 0],
    ]);
    const whole = await planOf(fourShortSheets);
    expect(plan.stock.map(({ needMl }) => needMl)).toEqual(whole.plan.stock.map(({ needMl }) => needMl));
    expect(page).not.toContain('<section id="pots"');
    expect(page).not.toContain('<section id="instead"');
    expect(page).toContain('<section id="use"');
    expect(figuresOf(view)).toEqual([
      ['No pots yet', '2 paints are needed, from scratch.'],
      ['No prices yet', expect.stringContaining('what shops ask into the offers sheet')],
      ['2 pots, without a shop', expect.stringContaining('brick red (1 pot of 17 ml, unpriced)')],
    ]);
    for (const line of view.more) expect(page).toContain(line);
  });

  it('is told which paints are not on offer, once there are offers', async () => {
    const { problems } = await planOf({ ...army, 'offers.csv': offers, 'shops.csv': shops });
    expect(problems.map(({ code, found }) => [code, found])).toEqual([['paint-not-had', 'earth wash']]);
  });

  it('of which a sheet is missing stays an error', async () => {
    const { 'figures.csv': __, ...rest } = army;
    await expect(planOf(rest)).rejects.toThrow('missing-sheet');
  });
});
