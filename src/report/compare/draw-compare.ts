// Compare: compare.html. In: the view. Out: one self-contained page as text, in the looks of the report, without a script.
import { escapeMarkup } from '../drawing/escape-markup.js';
import { loadPageLibrary } from '../page/fill-templates.js';
import { sharedWords } from '../words/words.js';
import type { CompareRow, CompareView } from './view-compare.js';
import { compareWords } from './words.js';

const { columns, headings } = compareWords;

/** Everything from the sheets is escaped. */
export async function drawCompare(view: CompareView): Promise<string> {
  const { openTemplates } = await loadPageLibrary();
  const { stylesheet, styleSource } = (await openTemplates('report')).sheet;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '${styleSource}'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>${compareWords.title} – Halfpot</title>
<style>${stylesheet}</style>
</head>
<body>
<header><div class="masthead"><div class="title">
<h1>${compareWords.title}</h1>
<p class="facts"><span>${columns.a}: ${bdi(view.names.a)}</span> <span>${columns.b}: ${bdi(view.names.b)}</span></p>
</div></div></header>
<main>
${drawSections(view)}</main>
<footer>
<p>${sharedWords.made}</p>
</footer>
</body>
</html>
`;
}

function drawSections({ notes, isSame, sums, paints, alike, sheets, sheetNotes }: CompareView): string {
  return [
    isSame ? note(compareWords.same) : '',
    section(
      headings.sums,
      drawTable({ first: columns.sum, rows: sums, hasDifference: true }) + notes.map(note).join(''),
    ),
    section(
      headings.paints,
      drawTable({ first: columns.paint, rows: paints, hasDifference: true }) +
        [alike].filter(Boolean).map(note).join(''),
    ),
    section(
      headings.sheets,
      drawTable({ first: columns.sheet, rows: sheets, hasDifference: false }) + sheetNotes.map(note).join(''),
    ),
  ].join('');
}

/** A text of the sheets, in its own direction. */
const bdi = (text: string): string => `<bdi>${escapeMarkup(text)}</bdi>`;

const note = (text: string): string => `<p class="note">${escapeMarkup(text)}</p>\n`;

const section = (heading: string, content: string): string =>
  `<section>\n<div class="margin"><h2>${escapeMarkup(heading)}</h2></div>\n<div class="body">\n${content}</div>\n</section>\n`;

interface Drawn {
  /** What the rows are. */
  readonly first: string;
  readonly rows: readonly CompareRow[];
  readonly hasDifference: boolean;
}

/** '' without rows. */
function drawTable({ first, rows, hasDifference }: Drawn): string {
  if (rows.length === 0) return '';
  const heads = [first, columns.a, columns.b, ...(hasDifference ? [columns.difference] : [])];
  const look = hasDifference ? ' class="number"' : '';
  const head = heads
    .map((text, at) => `<th scope="col"${at === 0 ? '' : look}>${escapeMarkup(text)}</th>`)
    .join('');
  const cell = (text: string): string => `<td${look}>${bdi(text)}</td>`;
  const body = rows.map(
    ({ what, a, b, difference }) =>
      `<tr><th scope="row">${bdi(what)}</th>${cell(a)}${cell(b)}${hasDifference ? cell(difference) : ''}</tr>\n`,
  );
  return `<div class="scroll" tabindex="0" role="region" aria-label="${escapeMarkup(first)}"><table>\n<thead><tr>${head}</tr></thead>\n<tbody>\n${body.join('')}</tbody>\n</table></div>\n`;
}
