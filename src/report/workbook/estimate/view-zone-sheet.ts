// Report view: areas of zones on figures. In: zones of the painter, the areas' sheet. Out: the sheet, and a cell a zone.
import type { OwnZone } from '../../../model/sheets.js';
import type { FigureArea } from '../../../model/work.js';
import { partsOfZone, type ZonePart } from '../../../model/zones.js';
import { partColumns, partKey } from './area-columns.js';
import { columnWords } from './column-words.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { AreaSheet } from './view-area-sheet.js';
import type { AssumptionSheet } from './view-assumption-sheet.js';
import { sheetWords } from './words.js';
import type { SheetView } from './workbook-view.js';
import { call, num, over, type Term } from './write-formula.js';

export interface ZoneSheet {
  /** The zone's area on a figure, cm2; a row is written when it is first asked for. */
  readonly areaOf: (figure: string, zone: string) => Term;
  readonly view: () => SheetView;
}

interface ZoneInputs {
  readonly areas: AreaSheet;
  readonly figures: ReadonlyMap<string, FigureArea>;
  readonly likely: AssumptionSheet['likely'];
}

/** One row for each zone on each figure: how much of each part is in it, 0 to 1. */
export function openZones(zones: readonly OwnZone[], { areas, figures, likely }: ZoneInputs): ZoneSheet {
  const names = columnWords.zones;
  const columns: Readonly<Record<string, ColumnOf>> = {
    figure: [names.figure, 22],
    zone: [names.zone, 18],
    areaCm2: [names.areaCm2, 10, 3],
    ...partColumns(areas.parts),
  };
  const table = new SheetTable<string>(sheetWords.zones.name, columns);
  const rows = new Map<string, number>();
  const write = (figure: string, zone: string): number => {
    const areaRow = areas.rowOf(figure);
    const row = table.add({ figure, zone });
    let areaCm2 = 0;
    for (const one of partsOfZone(zone, figures.get(figure)?.figure ?? { figure }, zones)) {
      if (!areas.parts.includes(one.part)) continue;
      const cm2 = areas.table.number(partKey(one.part), areaRow);
      if (cm2 === 0) continue;
      table.put(row, { [partKey(one.part)]: cellOf(one, likely) });
      areaCm2 += cm2 * table.number(partKey(one.part), row);
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

/** A share of the sheets is a number; one that is assumed follows its assumption. */
const cellOf = (one: ZonePart, likely: AssumptionSheet['likely']): number | Term =>
  'share' in one ? one.share : over(likely(one.assumed), num(100));
