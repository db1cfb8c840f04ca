// Command line: what flags of several commands share. In: values as typed. Out: the same, once or gathered; words of the help.
import { InvalidArgumentError } from 'commander';

/** Where the report goes unless said otherwise. */
export const usualFolder = 'halfpot-report';

export const sheetsSays = 'a folder of CSV sheets, or a workbook (the current folder if left out)';

/** The value of a flag; given twice, nobody could tell which of the two is meant. */
export const collect = (value: string, before: readonly string[] = []): readonly string[] => [
  ...before,
  value,
];

export function once(value: string, before: string | undefined): string {
  if (before !== undefined) throw new InvalidArgumentError(`It is given twice, also as "${before}".`);
  return value;
}

export const example = (typed: string, does: string): string => `\nExample:\n  halfpot ${typed}\n  ${does}`;
