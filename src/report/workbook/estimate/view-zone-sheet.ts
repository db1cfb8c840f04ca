// Report view: areas of zones on figures. In: zones of the painter, the areas' sheet. Out: the sheet, and a cell a zone.
import type { OwnZone } from '../../../model/sheets.js';
import { type Part, parts, partsOfZone, type ZonePart } from '../../../model/zones.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import { type AreaSheet, firstPart, lastPart } from './view-area-sheet.js';
import type { AssumptionSheet } from './view-assumption-sheet.js';
import type { SheetView } from './workbook-view.js';
import { call, num, over, type Term } from './write-formula.js';

const partColumns: Readonly<Record<string, ColumnOf>> = Object.fromEntries(
  parts.map((part): [Part, ColumnOf] => [part, [part, 11]]),
);

export interface ZoneSheet {
  /** The zone's area on a figure, cm2; a row is written when it is first asked for. */
  readonly areaOf: (figure: string, zone: string) => Term;
  readonly view: () => SheetView;
}

/** One row for each zone on each figure: how much of each part is in it, 0 to 1. */
export function openZones(
  zones: readonly OwnZone[],
  areas: AreaSheet,
  likely: AssumptionSheet['likely'],
): ZoneSheet {
  const columns: Readonly<Record<string, ColumnOf>> = {
    figure: ['figure', 22],
    zone: ['zone', 18],
    areaCm2: ['area cm2', 10, 3],
    ...partColumns,
  };
  const table = new SheetTable<string>('zones', columns);
  const rows = new Map<string, number>();
  const write = (figure: string, zone: string): number => {
    const areaRow = areas.rowOf(figure);
    const row = table.add({ figure, zone });
    let areaCm2 = 0;
    for (const one of partsOfZone(zone, figure, zones)) {
      const cm2 = areas.table.number(one.part, areaRow);
      if (cm2 === 0) continue;
      table.put(row, { [one.part]: cellOf(one, likely) });
      areaCm2 += cm2 * table.number(one.part, row);
    }
    const ofFigure = areas.table.range(firstPart, lastPart, { from: areaRow, to: areaRow });
    const inZone = table.range(firstPart, lastPart, { from: row, to: row });
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

/** A share of the sheets is a number; one that is assumed follows its assumption. */
const cellOf = (one: ZonePart, likely: AssumptionSheet['likely']): number | Term =>
  'share' in one ? one.share : over(likely(one.assumed), num(100));
