// One case or more for each code of the log's rows about pots, with the exact words.
import type { ProblemCase } from './problem-case.js';
import { spoil } from './spoil-sheets.js';

const ledger = (...rows: readonly string[]): readonly string[] => [
  'date,paint,what,left,size ml,pots,price,shop,used ml',
  ...rows,
];
const offers = ['shop,offer,price,paint,size ml', 'The Eel Trap,red,3.50,brick red,17'];

export const ledgerCases: readonly ProblemCase[] = [
  spoil(
    'log-takes-back-nothing',
    {
      log: ledger(
        '2026-03-01,brick red,bought,,17,2,5.90,,',
        '2026-03-01,brick red,not bought,,17,2,5.90,,',
        '2026-03-01,brick red,not bought,,17,2,5.90,,',
      ),
    },
    'log.csv row 4, "what" (C4): no row before it is like this one, so it takes nothing back. Copy the row that never was, all its cells, and write not before its what.',
  ),
  spoil(
    'log-unknown-shop',
    { offers, log: ledger('2026-03-01,brick red,bought,,17,2,5.90,The Eel Trp,') },
    'log.csv row 2, "shop" (H2): no sheet of yours knows the shop "The Eel Trp". It counts all the same; if that is meant, write The Eel Trap.',
  ),
  spoil(
    'log-idle-cell',
    { log: ledger('2026-03-01,brick red,bought,,17,,,,', '2026-03-01,brick red,arrived,40%,17,,,,') },
    'log.csv row 3, "left" (D3): of a row with arrived in what this cell is not read. Leave it blank, or write another row for it.',
  ),
  spoil(
    'log-nothing-counted',
    { log: ledger('2026-03-01,brick red,counted,,17,,,,') },
    'log.csv row 2, "left" (D2): this count says neither what is left nor how many pots there are. Write left, such as 40%, or pots.',
  ),
  // The count is bad, not blank.
  spoil(
    'no-pots',
    { log: ledger('2026-03-01,brick red,counted,,17,0,,,') },
    'log.csv row 2, "pots" (F2): "0" is zero, and a number of pots never is. Write how many there are; of pots that are gone write a row into the log with thrown away in what.',
  ),
  spoil(
    'log-empty-missing',
    { log: ledger('2026-03-01,brick red,counted,31.2 g,,,,,') },
    'log.csv row 2, "left" (D2): nobody knows what the empty pot weighs, so this count is left out. Write its weight into empty g of the pots sheet, or what is left in ml or percent.',
  ),
  spoil(
    'log-not-coming',
    {
      log: ledger(
        '2026-03-02,brick red,bought,,17,2,,,',
        '2026-03-01,brick red,arrived,,,,,,',
        '2026-03-03,brick red,arrived,,17,3,,,',
      ),
    },
    'log.csv row 3, "what" (C3): more arrived than was bought: 0 on the way. Write the row with bought before it, with its day, size and shop; until then it brings no more than that.',
    'log.csv row 4, "what" (C4): more arrived than was bought: 2 on the way. Write the row with bought before it, with its day, size and shop; until then it brings no more than that.',
  ),
  spoil(
    'log-not-there',
    {
      log: ledger(
        '2026-03-01,brick red,thrown away,,12,,,,',
        '2026-03-01,brick red,counted,40%,,2,,,',
        '2026-03-02,earth wash,thrown away,,,,,,',
        '2026-03-03,earth wash,counted,full,,,,,',
      ),
    },
    'log.csv row 2, "what" (C2): on that day so many do not stand on the shelf: 0. Check paint, size and day, and whether what was bought has arrived.',
    'log.csv row 3, "pots" (F3): on that day so many do not stand on the shelf: 1. Check paint, size and day, and whether what was bought has arrived.',
    'log.csv row 5, "what" (C5): on that day so many do not stand on the shelf: 0. Check paint, size and day, and whether what was bought has arrived.',
  ),
  spoil(
    'log-no-size',
    {
      offers: ['shop,offer,price,paint,size ml', 'The Eel Trap,slate,3.50,slate,17'],
      log: ledger('2026-03-01,slate,bought,,,1,,,', '2026-03-01,brick red,bought,,,1,,,'),
    },
    'log.csv row 2, "size ml" (E2): nobody knows how large a pot this is, so it is left out. Write size ml.',
  ),
  // A reading by eye may be off by a quarter of the pot: from 40 % to 65 % it is no gain yet.
  spoil(
    'log-count-gains',
    {
      log: ledger(
        '2026-03-01,brick red,counted,40%,,,,,',
        '2026-03-02,brick red,counted,65%,,,,,',
        '2026-03-03,brick red,counted,91%,,,,,',
      ),
    },
    'log.csv row 4, "left" (D4): there is more in the pot, 91%, than at the count before, 11.1 ml. The later count holds; check both, and whether a pot was bought.',
  ),
  spoil(
    'left-over-size',
    { log: ledger('2026-03-01,brick red,counted,18 ml,,,,,') },
    'log.csv row 2, "left" (D2): "18 ml" is more than the whole pot, 17 ml. Check both numbers.',
  ),
  // Today is 2026-11-02: five years from 2021-11-02 end today. Counted since, empty or younger it is not asked about.
  spoil(
    'pot-old',
    {
      pots: [
        'paint,size ml,left,opened,counted',
        'brick red,17,60%,2021-11-02,2026-11-01',
        'brick red,17,60%,2021-11-03,',
        'earth wash,24,60%,2020-02-29,2025-03-01',
        'earth wash,24,empty,2019-01-01,',
        'earth wash,24,60%,2020-02-29,2025-02-28',
        'slate,24,60%,2019-01-01,',
        'brick red,17,60%,2019-01-01,2019-01-01',
      ],
      log: ledger('2026-10-01,slate,counted,50%,,,,,'),
      settings: ['name,value', 'date,2026-11-02'],
    },
    'pots.csv row 2, "opened" (D2): this pot was opened on 2021-11-02, and nobody has looked into it since 2026-11-02. Does it still flow? If so count it, and write the day into counted; if not, take its row out.',
    'pots.csv row 6, "opened" (D6): this pot was opened on 2020-02-29, and nobody has looked into it since 2025-02-29. Does it still flow? If so count it, and write the day into counted; if not, take its row out.',
    'pots.csv row 8, "opened" (D8): this pot was opened on 2019-01-01, and nobody has looked into it since 2024-01-01. Does it still flow? If so count it, and write the day into counted; if not, take its row out.',
  ),
  spoil(
    'pot-old',
    {
      pots: ['paint,size ml,left,opened', 'brick red,17,60%,2023-11-02', 'earth wash,24,,'],
      settings: ['name,value', 'date,2026-11-02', 'years of an opened pot,3'],
    },
    'pots.csv row 2, "opened" (D2): this pot was opened on 2023-11-02, and nobody has looked into it since 2026-11-02. Does it still flow? If so count it, and write the day into counted; if not, take its row out.',
  ),
  spoil(
    'log-too-many-pots',
    {
      log: ledger(
        ...Array.from({ length: 6 }, (_, at) => `2026-03-0${at + 1},brick red,bought,,17,1000,,,`),
        '2026-03-08,brick red,bought,,17,1000,,,',
      ),
    },
    'log.csv row 7, "pots" (F7): up to this row the log has bought 6000 pots, and 5000 can be followed. Write the pots that are still there into the pots sheet, and begin a new log.',
  ),
];
