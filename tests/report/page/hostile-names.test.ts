// Names as strangers write them: markup, quotes, template braces, letters that run the other way. In a real browser they are
// text and nothing else, whatever they are put together from.
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { renderReport } from '../../../src/report/page/render-report.js';
import { viewPlan } from '../../../src/report/page/view.js';
import { smallPlan } from '../a-small-plan.js';
import { openPages, type Pages, unfold } from './open-pages.js';
import { renameAll } from './rename-all.js';

let pages: Pages;
beforeAll(async () => {
  pages = await openPages();
});
afterAll(() => pages?.close());

const pieces = fc.constantFrom(
  ...[
    '</script>',
    '<script>alert(1)</script>',
    '</style>',
    '</title>',
    '</svg>',
    '<!--',
    '-->',
    ']]>',
    '<',
    '>',
  ],
  ...[
    '"',
    "'",
    '`',
    '&',
    '&lt;',
    '&#x3c;',
    '=',
    '/>',
    ' onerror=alert(1) ',
    'javascript:',
    '{{this}}',
    '{{{',
    '}}',
  ],
  ...[
    '\u202e',
    '\u2066',
    '\u200f',
    'אבג',
    'שלום',
    '\u0301',
    '👩‍🎨',
    '\u0000',
    '\ufffd',
    '\ud800',
    '\t',
    ' ',
    'oak',
  ],
);
const names = fc.array(pieces, { minLength: 1, maxLength: 6 }).map((parts) => parts.join(''));

const shapeOf = (html: string): string[] =>
  [...html.matchAll(/<[a-z!/][^>]*>/gi)].map(([tag]) => tag.split(/[\s>]/)[0] ?? '');

it('names of any pieces leave the page as it is', async () => {
  const harmless = shapeOf(await renderReport(viewPlan(renameAll(smallPlan, 'x'), [])));
  await fc.assert(
    fc.asyncProperty(names, async (text) => {
      expect(shapeOf(await renderReport(viewPlan(renameAll(smallPlan, text), [])))).toEqual(harmless);
    }),
    { numRuns: 40 },
  );
});

it('a browser makes nothing of them, and still sorts and finds', async () => {
  const { page, complaints, requests } = await pages.visit('about:blank');
  const count = async (url: string) => {
    const [complained, asked] = [complaints.length, requests.length];
    await page.goto(url);
    await unfold(page);
    await page.locator('.paints button.sort').first().click();
    const found = await page.evaluate(() => ({
      elements: document.querySelectorAll('*').length,
      handlers: [...document.querySelectorAll('*')].filter((one) =>
        one.getAttributeNames().some((name) => name.startsWith('on')),
      ).length,
      wide: document.documentElement.scrollWidth > innerWidth,
    }));
    const shown = await page.locator('.paints tbody tr:first-child bdi').first().textContent();
    return { ...found, complaints: complaints.slice(complained), asked: requests.length - asked, shown };
  };
  const plain = await count(await pages.write('plain.html', renameAll(smallPlan, 'x')));
  await fc.assert(
    fc.asyncProperty(names, async (text) => {
      const seen = await count(await pages.write('hostile.html', renameAll(smallPlan, text)));
      // HTML leaves NUL out of text; UTF-8 has no lone surrogate, and writes the replacement character.
      const written = text.replaceAll('\0', '').replaceAll('\ud800', '\ufffd');
      expect(seen).toMatchObject({
        elements: plain.elements,
        handlers: 0,
        wide: false,
        complaints: [],
        asked: 1,
      });
      expect(seen.shown).toContain(written);
    }),
    { numRuns: 8, examples: [['a\u0000b\ud800c </script>\u202e\u05d0']] },
  );
});
