// The page as text: golden HTML, and every name a painter may choose turned against it.
// After a wanted change: look at the page, then `npx vitest run tests/report/page --update`.
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { Problem } from '../../../src/model/problem.js';
import { renderReport } from '../../../src/report/page/render-report.js';
import { viewPlan } from '../../../src/report/page/view.js';
import { changedPlan, smallPlan } from '../a-small-plan.js';
import { renameAll } from './rename-all.js';

const page = await renderReport(viewPlan(smallPlan, []));

it('is the golden page', async () => {
  await expect(page).toMatchFileSnapshot('golden/small-report.html');
});

it('gives the same bytes again', async () => {
  expect(await renderReport(viewPlan(smallPlan, []))).toBe(page);
});

it('holds every paint of a large army', async () => {
  const view = viewPlan(smallPlan, []);
  const [paint] = view.use.paints;
  if (paint === undefined) throw new Error('no paint');
  const pageOf = (count: number): Promise<string> =>
    renderReport({ ...view, use: { ...view.use, paints: Array.from({ length: count }, () => paint) } });
  const [sixty, more] = [await pageOf(60), await pageOf(61)];
  expect(more).toMatch(/<summary><h3>Millilitres by paint<\/h3> <span class="count">61<\/span>/);
  const rowsOf = (html: string): number => html.split('class="drawn"').length - 1;
  expect(rowsOf(more) - rowsOf(sixty)).toBe(1);
  expect(more.match(/<details/g)?.length).toBe(more.match(/<\/details>/g)?.length);
});

it('folds urgent pots past sixty, every one of them still there', async () => {
  const view = viewPlan(smallPlan, []);
  const group = view.pots.groups.find(({ state }) => state === 'short');
  const [paint] = group?.paints ?? [];
  if (group === undefined || paint === undefined) throw new Error('nothing is short');
  const pageOf = (count: number): Promise<string> => {
    const groups = [{ ...group, paints: Array.from({ length: count }, () => paint) }];
    return renderReport({ ...view, pots: { ...view.pots, groups } });
  };
  const [sixty, more] = [await pageOf(60), await pageOf(61)];
  expect(sixty).toContain('<details class="pot-group fold" open>');
  expect(more).toMatch(/<details class="pot-group fold">[\s\S]*<span class="count">61<\/span>/);
  const potsOf = (html: string): number => html.split('class="pot-name"').length - 1;
  expect([potsOf(sixty), potsOf(more)]).toEqual([60, 61]);
});

describe('one self-contained file', () => {
  it('lets in its own style and its own script by their hashes, and nothing else', () => {
    const [[, style] = [], ...moreStyles] = [...page.matchAll(/<style>([\s\S]*?)<\/style>/g)];
    const [[, script] = [], ...moreScripts] = [...page.matchAll(/<script>([\s\S]*?)<\/script>/g)];
    expect([moreStyles, moreScripts]).toEqual([[], []]);
    expect(page).not.toMatch(/<script |<link|<iframe|<img|@import|url\((?!#)|\sstyle=/i);
    expect(page.replace(script ?? '', '')).not.toMatch(/\son\w+=|javascript:/i);
    // Content Security Policy Level 3, section 2.3.1: the hash is of the text between the tags, in base64.
    const hash = (text = '') => createHash('sha256').update(text).digest('base64');
    expect(page).toContain(
      `content="default-src 'none'; style-src 'sha256-${hash(style)}'; script-src 'sha256-${hash(script)}'; base-uri 'none'; form-action 'none'"`,
    );
  });

  it('names no address of the network', () => {
    expect(page).not.toMatch(/(https?:)?\/\/[a-z]/i);
  });

  it('uses each id once, and every link within the page leads somewhere', () => {
    const ids = [...page.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const targets = [...page.matchAll(/href="#([^"]+)"|labelledby="([^"]+)"|url\(#([^)]+)\)/g)].flatMap(
      ([, link, labels, pattern]) => (link ?? labels ?? pattern ?? '').split(' '),
    );
    expect(targets.length).toBeGreaterThan(50);
    expect(targets.filter((target) => !ids.includes(target))).toEqual([]);
  });

  it('has headings in order, one h1', () => {
    const levels = [...page.matchAll(/<h([1-6])[\s>]/g)].map(([, level]) => Number(level));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, index) => {
      expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1);
    });
  });

  it('gives every table a caption and every column head a scope', () => {
    expect(page.match(/<table/g)?.length).toBe(page.match(/<caption/g)?.length);
    expect(page.match(/<th[\s>](?![^>]*scope=)/g)).toBeNull();
  });
});

const tags = (html: string): string[] =>
  [...html.matchAll(/<[a-z!/][^>]*>/gi)].map(([tag]) => tag.split(/[\s>]/)[0] ?? '');

describe.each([
  ['a closing script', '</script><script>alert(1)</script>'],
  ['an image in a broken attribute', '"><img src=x onerror=alert(1)>'],
  ['a single quote', "' onmouseover='alert(1)"],
  ['a closing svg', '</title></svg></style><b>'],
  ['a comment', '<!-- '],
  ['a template', '{{title}} {{{this}}} {{> trust}}'],
  ['a style', '</style><style>*{display:none}</style>'],
  ['an entity', '&lt;b&gt; &amp;'],
])('%s in every name', (_, text) => {
  it('is text and nothing else', async () => {
    const problem: Problem = {
      code: 'not-a-volume',
      severity: 'warning',
      file: `pots${text}.csv`,
      column: text,
      found: text,
      expected: text,
      hint: text,
    };
    const harmless = await renderReport(
      viewPlan(renameAll(smallPlan, 'x'), [{ ...problem, file: 'x', column: 'x', found: 'x', hint: 'x' }]),
    );
    const hostile = await renderReport(viewPlan(renameAll(smallPlan, text), [problem]));
    expect(tags(hostile)).toEqual(tags(harmless));
    if (/[<>"']/.test(text)) expect(hostile).not.toContain(text);
  });
});

it('takes only real colours into the page', async () => {
  const [first] = smallPlan.paints.values();
  if (first === undefined) throw new Error('no paint');
  const paints = new Map([...smallPlan.paints, [first.paint, { ...first, hex: 'red" onload="x' }]]);
  const html = await renderReport(viewPlan(changedPlan({ paints }), []));
  expect(html).not.toContain('onload');
});
