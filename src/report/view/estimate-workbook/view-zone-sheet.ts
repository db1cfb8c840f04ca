// Report view: areas of zones on figures. In: zones of the painter, the areas' sheet. Out: the sheet, and a cell a zone.
import type { OwnZone } from '../../../model/sheets.js';
import type { FigureArea } from '../../../model/work.js';
import { type Part, partsOfZone } from '../../../model/zones.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import { type AreaSheet, partColumns, partKey } from './view-area-sheet.js';
import type { SheetView } from './workbook-view.js';
import { call, type Term } from './write-formula.js';

export interface ZoneSheet {
  /** The zone's area on a figure, cm2; a row is written when it is first asked for. */
  readonly areaOf: (figure: string, zone: string) => Term;
  readonly view: () => SheetView;
}

/** One row for each zone on each figure: how much of each part is in it, 0 to 1. */
export function openZones(
  zones: readonly OwnZone[],
  areas: AreaSheet,
  figures: ReadonlyMap<string, FigureArea>,
): ZoneSheet {
  const columns: Readonly<Record<string, ColumnOf>> = {
    figure: ['figure', 22],
    zone: ['zone', 18],
    areaCm2: ['area cm2', 10, 3],
    ...partColumns(areas.parts),
  };
  const table = new SheetTable<string>('zones', columns);
  const rows = new Map<string, number>();
  const write = (figure: string, zone: string): number => {
    const areaRow = areas.rowOf(figure);
    const shares = sharesOf(partsOfZone(zone, figures.get(figure)?.figure ?? { figure }, zones));
    const row = table.add({ figure, zone });
    let areaCm2 = 0;
    for (const [part, share] of shares) {
      if (!areas.parts.includes(part)) continue;
      const cm2 = areas.table.number(partKey(part), areaRow);
      if (cm2 > 0) table.put(row, { [partKey(part)]: share });
      areaCm2 += cm2 * share;
    }
    const [first, last] = [partKey(areas.parts[0] ?? ''), partKey(areas.parts.at(-1) ?? '')];
    const ofFigure = areas.table.range(first, last, { from: areaRow, to: areaRow });
    const inZone = table.range(first, last, { from: row, to: row });
    table.put(row, { areaCm2: call('SUMPRODUCT', [ofFigure, inZone], areaCm2) });
    return row;
  };
  const areaOf = (figure: string, zone: string): Term => {
    const key = `${figure}\n${zone}`;
    const row = rows.get(key) ?? write(figure, zone);
    rows.set(key, row);
    return table.from('areaCm2', row);
  };
  return { areaOf, view: () => table.view() };
}

/** A part that a zone names twice counts with both shares. */
function sharesOf(covered: readonly { readonly part: Part; readonly share: number }[]): Map<Part, number> {
  const shares = new Map<Part, number>();
  for (const { part, share } of covered) shares.set(part, (shares.get(part) ?? 0) + share);
  return shares;
}
