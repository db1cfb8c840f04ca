// Tests: sheets that no table can be taken from as they stand, or only by somebody who looks twice.

const office = (path, language, ways) => ({ path, in: language, by: 'office', ...ways });
const gnumeric = (path, language, ways) => ({ path, in: language, by: 'gnumeric', ...ways });

const plainPots = `
paint | size ml | left | price
Towpath primer | 400 | 55% | 12.50
Sluice green | 17 | 40% | 2.95
Peat water wash | 24 | 25% | 4.80`;

const besideEachOther = `
paint | size ml | left | price | | shop | postage | free from
Towpath primer | 400 | 55% | 12.50 | | The Eel Trap | 4.90 | 50
Sluice green | 17 | 40% | 2.95 | | The Tarred Knot | 3.50 |
Peat water wash | 24 | 25% | 4.80 | | |
Lock brick | 17 | full | 2.95 | | |`;

const twoHeaders = `
What it is | | Where it stands | | Money
paint | size ml | left | place | price
Sluice green | 17 | 40% | rack 1 | 2.95
Lock brick | 17 | 15% | rack 1 | 2.95
Peat water wash | 24 | 25% | bench | 4.80`;

const unitsBelow = `
Paint | Size | Left | Price
 | ml | % | €
Sluice green | 17 | 40 | 2.95
Lock brick | 17 | 15 | 2.95
Peat water wash | 24 | 25 | 4.80`;

const pivot = `
Count of pots | Column Labels | | |
Row Labels | Attic | Bench | Rack | Grand Total
Lock brick | | 1 | 2 | 3
Peat water wash | | 2 | | 2
Sluice green | 1 | | 1 | 2
Grand Total | 1 | 3 | 3 | 7`;

const sideways = `
paint | Sluice green | Lock brick | Peat water wash
size ml | 17 | 17 | 24
left | 40% | 15% | 25%
price | 2.95 | 2.95 | 4.80`;

const letters = Array.from({ length: 37 }, (_, at) => `note ${at + 1}`);
const fortyColumns = [
  ['paint', ...letters.slice(0, 12), 'size ml', ...letters.slice(12, 30), 'left', ...letters.slice(30)],
  [
    'Sluice green',
    ...letters.slice(0, 12).map(() => 'dry'),
    '17',
    ...letters.slice(12, 30).map(() => ''),
    '40%',
  ],
  [
    'Lock brick',
    '',
    'thin',
    ...letters.slice(2, 12).map(() => ''),
    '17',
    ...letters.slice(12, 30),
    '15%',
    'soft',
  ],
]
  .map((row) => row.join(' | '))
  .join('\n');

const everyPage = `
paint | size ml | left
Sluice green | 17 | 40%
Lock brick | 17 | 15%
paint | size ml | left
Peat water wash | 24 | 25%
Weir foam | 17 | 30%
paint | size ml | left
Silt paste | 100 | 45%`;

const twiceLeft = `
paint | size ml | left | left
Sluice green | 17 | 60% | 40%
Lock brick | 17 | 30% | 15%`;

const twoLanguages = `
Farbe / Colour | Inhalt / Size (ml) | Rest / Left | Preis / Price
Schleusengrün / Sluice green | 17 | 40% | 2,95
Schleusenziegel / Lock brick | 17 | 15% | 2,95`;

const far = `
Hobby book
${'-\n'.repeat(298)}
paint | size ml | left
Sluice green | 17 | 40%
Lock brick | 17 | 15%`.replace(/\n+/g, '\n');

const farWithNotes = `
${Array.from({ length: 299 }, (_, at) => `Evening ${at + 1}: swept the lock`).join('\n')}
paint | size ml | left
Sluice green | 17 | 40%
Lock brick | 17 | 15%`;

const barges = `
Barge | Berth | Length m | Dues paid
Grey heron | 3 | 18.5 | yes
Slow otter | 4 | 21 | no
Wet Monday | 7 | 16.2 | yes`;

const onlyNames = `
Sluice green
Lock brick
Peat water wash
Weir foam
Holt brown`;

export const spoilt = [
  office('beside-each-other.xlsx', 'en', { sheets: { pots: besideEachOther } }),
  office('two-headers.xlsx', 'en', {
    sheets: { pots: twoHeaders },
    merges: { pots: ['A1:B1', 'C1:D1'] },
  }),
  gnumeric('units-below/pots.csv', 'en', { sheets: { pots: unitsBelow } }),
  office('pivot.xlsx', 'en', { sheets: { 'Pots by place': pivot } }),
  gnumeric('sideways.ods', 'en', { sheets: { pots: sideways } }),
  gnumeric('sideways.xlsx', 'en', { sheets: { pots: sideways } }),
  office('locked.xlsx', 'en', { sheets: { pots: plainPots }, password: 'eel' }),
  office('locked.ods', 'en', { sheets: { pots: plainPots }, password: 'eel' }),
  office('macros.xlsm', 'en', { sheets: { pots: plainPots } }),
  office('forty-columns/pots.csv', 'en', { sheets: { pots: fortyColumns } }),
  gnumeric('every-page/pots.csv', 'en', { sheets: { pots: everyPage } }),
  office('twice-left.xlsx', 'en', { sheets: { pots: twiceLeft } }),
  office('two-languages.xlsx', 'de', { sheets: { Farben: twoLanguages } }),
  office('row-300.xlsx', 'en', { sheets: { pots: far } }),
  office('row-300-below-notes/pots.csv', 'en', { sheets: { pots: farWithNotes } }),
  office('barges.xlsx', 'en', { sheets: { Moorings: barges } }),
  office('barges-as-pots/pots.csv', 'en', { sheets: { pots: barges } }),
  office('only-names/paints.txt', 'en', { sheets: { paints: onlyNames } }),
  office('old.xls', 'en', { sheets: { pots: plainPots } }),
];
