// Words: which column each header of a sheet was taken for, for page and console alike. In: how it was read. Out: text.
import type { SheetRead } from '../../model/sheets.js';

/** Headers of one sheet that are named; only a table gone wrong has more. */
const mostNamed = 100;
/** Letters of a header. */
const longest = 40;

export interface ColumnsRead {
  /** `Colour -> paint`; just the header where it is the column's own name. */
  readonly taken: readonly string[];
  /** Headers that nothing is read from, with what they were asked to be: `In the pot (left?)`. */
  readonly alone: readonly string[];
}

/** `name` makes a header fit for where it stands. */
export function wordColumnsRead({ columns }: SheetRead, name: (header: string) => string): ColumnsRead {
  const named = (header: string): string => name(cut(header));
  const shown = columns.slice(0, mostNamed);
  const more = columns.length > mostNamed ? [`and ${columns.length - mostNamed} more`] : [];
  return {
    taken: shown.flatMap(({ header, column, isOwn }) => {
      if (column === undefined) return [];
      return [isOwn ? named(header) : `${named(header)} -> ${column}`];
    }),
    alone: shown
      .flatMap(({ header, column, maybe }) => {
        if (column !== undefined) return [];
        return [maybe === undefined ? named(header) : `${named(header)} (${maybe}?)`];
      })
      .concat(more),
  };
}

function cut(header: string): string {
  const text = header.replace(/\s+/g, ' ').trim();
  return text.length > longest ? `${text.slice(0, longest)} ...` : text;
}
