// Report view: areas of zones on figures. In: zones of the painter, the areas' sheet. Out: the sheet, and a cell a zone.
import { remember } from '../../../model/remember.js';
import type { OwnZone } from '../../../model/sheets.js';
import type { FigureArea } from '../../../model/work.js';
import { partsOfZone, type ZonePart } from '../../../model/zones.js';
import { type Row, SheetTable } from './sheet-table.js';
import { sheetWords } from './sheet-words.js';
import { type AreaSheet, partColumns, partKey } from './view-area-sheet.js';
import type { Likely } from './view-assumption-sheet.js';
import { call, num, over, type Term } from './write-formula.js';

export interface ZoneSheet {
  /** The zone's area on a figure, cm2; a row is written when it is first asked for. */
  readonly areaOf: (figure: string, zone: string) => Term;
  readonly table: SheetTable<string>;
}

interface Place {
  readonly figure: string;
  readonly zone: string;
}

interface ZoneInputs {
  readonly areas: AreaSheet;
  readonly figures: ReadonlyMap<string, FigureArea>;
  readonly likely: Likely;
}

/** One row for each zone on each figure: how much of each part is in it, 0 to 1. */
export function openZones(zones: readonly OwnZone[], { areas, figures, likely }: ZoneInputs): ZoneSheet {
  const { columns, ...words } = sheetWords.zones;
  const table = new SheetTable<string>({ ...words, columns: { ...columns, ...partColumns(areas.parts) } });
  const write = ({ figure, zone }: Place): Row<string> => {
    const ofFigure = areas.rowOf(figure);
    const row = table.add({ figure, zone });
    let areaCm2 = 0;
    for (const one of partsOfZone(zone, figures.get(figure)?.figure ?? { figure }, zones)) {
      const key = partKey(one.part);
      if (!areas.parts.includes(one.part) || ofFigure.value(key) === 0) continue;
      row.put({ [key]: cellOf(one, likely) });
      areaCm2 += ofFigure.value(key) * row.value(key);
    }
    const [first, last] = [partKey(areas.parts[0] ?? ''), partKey(areas.parts.at(-1) ?? '')];
    const factors = [areas.table.range(first, last, [ofFigure]), table.range(first, last, [row])];
    row.put({ areaCm2: call('SUMPRODUCT', factors, areaCm2) });
    return row;
  };
  const rowOf = remember(write, ({ figure, zone }) => `${figure}\n${zone}`);
  return { areaOf: (figure, zone) => rowOf({ figure, zone }).from('areaCm2'), table };
}

/** A share of the sheets is a number; one that is assumed follows its assumption. */
const cellOf = (one: ZonePart, likely: Likely): number | Term =>
  'share' in one ? one.share : over(likely(one.assumed), num(100));
