// Acts: what stands in a cell. In: a cell, the page's numerals and words. Out: a number, or a text to compare.

const { decimal, digits, ...words } = document.body.dataset;
const less = words.less.split(' ');
const inPageOrder = new Intl.Collator(document.documentElement.lang, { numeric: true }).compare;

/** A cell's own text: ranges and marks beneath it are left out. */
function textOf(cell) {
  const copy = cell.cloneNode(true);
  for (const aside of copy.querySelectorAll('.range, .rests, .where, svg')) aside.remove();
  return copy.textContent.trim();
}

/** Its first number as the page writes them, time in minutes; NaN where there is none. */
function numberOf(cell) {
  const text = textOf(cell).replace(/\p{Nd}/gu, (digit) => {
    const value = digits.indexOf(digit);
    return value < 0 ? digit : String(value);
  });
  const time = /(?:(\d+)\s*h\b)?\s*(?:(\d+)\s*min\b)?/.exec(text.slice(text.search(/\d/)));
  const [found = ''] = /[-−]?\d(?:[\d.,'’٫٬\s]*\d)?/.exec(text) ?? [];
  const plain = [...found].filter((letter) => /\d/.test(letter) || letter === decimal).join('');
  const size = time?.[0].trim() ? 60 * (time[1] ?? 0) + Number(time[2] ?? 0) : Number.parseFloat(plain.replace(decimal, '.'));
  const under = text.startsWith(words.under) ? 0.999 : 1;
  const isLess = /^[-−]/.test(text) || text.split(/[^\p{L}]+/u).some((word) => less.includes(word));
  return size * under * (isLess ? -1 : 1);
}

/** Two numbers in the words that leave room for them. */
const fillIn = (says, some, all) => says.replace('{some}', some).replace('{all}', all);

const fold = (text) => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

/** An element with its text and its attributes. */
function make(name, text, attributes = {}) {
  const element = document.createElement(name);
  element.textContent = text;
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
}
