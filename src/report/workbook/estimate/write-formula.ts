// Report view: formulas and what they give, written together. In: cells and numbers. Out: terms, the text of which any
// spreadsheet program works out to their result.
import type { Formula } from './workbook-view.js';

/** How firmly a term holds together: a sum needs brackets inside a product, a cell never does. */
const sum = 0;
const product = 1;
const whole = 2;

/** A formula or a piece of one. */
export interface Term extends Formula {
  readonly result: number;
  readonly holds: number;
}

const wrap = ({ formula, holds }: Term, least: number): string => (holds < least ? `(${formula})` : formula);

/** A number that stands in a formula; 0 or above, written without exponent, which not every program reads. */
export const num = (value: number): Term => {
  const text = String(value);
  const formula = text.includes('e') ? value.toFixed(20).replace(/0+$/, '') : text;
  return { formula, result: value, holds: whole };
};

/** A cell and what stands in it. */
export const cellAt = (address: string, result: number): Term => ({
  formula: address,
  result,
  holds: whole,
});

/** A function that every spreadsheet program has, its arguments as text, and what it gives. */
export const call = (name: string, args: readonly string[], result: number): Term => ({
  formula: `${name}(${args.join(',')})`,
  result,
  holds: whole,
});

export const times = (...terms: readonly Term[]): Term => ({
  formula: terms.map((term) => wrap(term, product)).join('*'),
  result: terms.reduce((total, { result }) => total * result, 1),
  holds: product,
});

export const over = (above: Term, below: Term): Term => ({
  formula: `${wrap(above, product)}/${wrap(below, whole)}`,
  result: above.result / below.result,
  holds: product,
});

/** Of no terms: 0. */
export function plus(...terms: readonly Term[]): Term {
  const [first, ...more] = terms;
  if (first === undefined) return num(0);
  if (more.length === 0) return first;
  return {
    formula: terms.map(({ formula }) => formula).join('+'),
    result: terms.reduce((total, { result }) => total + result, 0),
    holds: sum,
  };
}

export const minus = (from: Term, take: Term): Term => ({
  formula: `${from.formula}-${wrap(take, product)}`,
  result: from.result - take.result,
  holds: sum,
});

export const square = (term: Term): Term => ({
  formula: `${wrap(term, whole)}^2`,
  result: term.result ** 2,
  holds: whole,
});

/** A function of terms. */
const callOf =
  (name: string, work: (...results: number[]) => number) =>
  (...terms: readonly Term[]): Term =>
    call(
      name,
      terms.map(({ formula }) => formula),
      work(...terms.map(({ result }) => result)),
    );

export const least = callOf('MIN', Math.min);
export const most = callOf('MAX', Math.max);
export const root = callOf('SQRT', Math.sqrt);

export const roundUp = (of: Term): Term => call('ROUNDUP', [of.formula, '0'], Math.ceil(of.result));

export const pi: Term = call('PI', [], Math.PI);

/** A question that a spreadsheet answers, and the answer. */
export interface Question {
  readonly formula: string;
  readonly answer: boolean;
}

export const isBelow = (one: Term, other: Term): Question => ({
  formula: `${one.formula}<${other.formula}`,
  answer: one.result < other.result,
});

export const isZero = (one: Term): Question => ({
  formula: `${one.formula}=0`,
  answer: one.result === 0,
});

export const both = (one: Question, other: Question): Question => ({
  formula: `AND(${one.formula},${other.formula})`,
  answer: one.answer && other.answer,
});

export const either = (question: Question, yes: Term, no: Term): Term =>
  call('IF', [question.formula, yes.formula, no.formula], (question.answer ? yes : no).result);

/** Words where the answer is yes, else a blank text. */
export const wordsIf = ({ formula, answer }: Question, words: string): Formula => ({
  formula: `IF(${formula},"${words}","")`,
  result: answer ? words : '',
});
