// One case or more for each code of the log's rows, with the exact words.
import type { ProblemCase } from './problem-case.js';
import { spoil } from './spoil-sheets.js';

const pots = (header: string, ...rows: readonly string[]): readonly string[] => [
  `paint,size ml${header}`,
  ...rows,
];

const weighed = (...rows: readonly string[]): readonly string[] => ['date,paint,before g,after g', ...rows];
const used = (...rows: readonly string[]): readonly string[] => ['date,paint,used ml', ...rows];
const worked = (...rows: readonly string[]): readonly string[] => [
  'date,paint,unit,step,figures,used ml',
  ...rows,
];

const amountCases: readonly ProblemCase[] = [
  spoil(
    'log-gains',
    { log: weighed('2026-03-01,brick red,30.1,31.2') },
    'log.csv row 2, "after g" (D2): "31.2" is more than before, 30.1 g. Swap the two weights if they stand in the wrong columns.',
  ),
  spoil(
    'log-half-weighed',
    {
      log: [
        'date,paint,before g,after g,unit,step,figures',
        '2026-03-01,brick red,30.1,,,,',
        '2026-03-02,brick red,,29,first spears,1,10',
      ],
    },
    'log.csv row 2, "after g" (D2): only one of the two weights is there. Write both; until then the row lowers no pot.',
    'log.csv row 3, "before g" (C3): only one of the two weights is there. Write both; until then the row lowers no pot.',
  ),
  spoil(
    'log-without-amount',
    { log: ['date,paint', '2026-03-01,brick red'] },
    'log.csv row 2, "used ml": this row does not say how much was used. Write both weights, or used ml; until then it lowers no pot.',
  ),
  // Once the pot has been looked into, its reading knows of the work: there is nothing to ask.
  spoil(
    'log-without-amount',
    {
      pots: pots(',left,counted', 'brick red,17,60%,2026-03-10', 'earth wash,24,,'),
      log: used('2026-03-10,brick red,', '2026-03-11,brick red,'),
    },
    'log.csv row 3, "used ml" (C3): this row does not say how much was used. Write both weights, or used ml; until then it lowers no pot.',
  ),
  spoil(
    'log-two-amounts',
    {
      log: [
        'date,paint,before g,after g,used ml',
        '2026-03-01,brick red,31.2,30.0,1.1',
        '2026-03-02,brick red,30.0,28.8,10',
      ],
    },
    'log.csv row 3, "used ml" (E3): used ml says 10 ml, and the two weights come to 1 ml. The weights count; leave this cell blank if they are right.',
  ),
];

// A batch is a sitting: 2000 figures in twos are a thousand, of a thousandth of a millilitre at the least.
const littleCases: readonly ProblemCase[] = [
  spoil(
    'log-too-little',
    {
      army: ['unit,figure,count,batch', 'first spears,spearman,4000,2'],
      log: worked(
        '2026-03-01,brick red,first spears,1,2000,1',
        '2026-03-02,brick red,first spears,1,2000,0.999',
        '2026-03-03,earth wash,first spears,2,3,0.001',
      ),
    },
    'log.csv row 3, "figures" (E3): 0.999 ml are less than brush and palette alone take for 2000 figures. Check the digits of both; the row teaches just what it says.',
    'log.csv row 4, "figures" (E4): 0.001 ml are less than brush and palette alone take for 3 figures. Check the digits of both; the row teaches just what it says.',
  ),
  // What a scale of whole grams shows as nothing may have been nearly one.
  spoil(
    'log-too-little',
    {
      army: ['unit,figure,count,batch', 'first spears,spearman,4000,1'],
      log: [
        'date,paint,unit,step,figures,before g,after g',
        '2026-03-01,brick red,first spears,1,1000,31,31',
        '2026-03-02,brick red,first spears,1,1001,31,31',
        '2026-03-03,brick red,first spears,1,1999,31,30',
      ],
    },
    'log.csv row 3, "figures" (E3): 0 g are less than brush and palette alone take for 1001 figures. Check the digits of both; the row teaches just what it says.',
  ),
];

const potCases: readonly ProblemCase[] = [
  // 17 ml of 1.2 g/ml weigh 20.4 g, 24 ml of a wash 24 g; a tenth more may be in a pot than its label says.
  spoil(
    'log-over-pot',
    {
      pots: pots(',kind', 'brick red,17,', 'earth wash,24,wash'),
      log: weighed(
        '2026-03-01,brick red,40,18',
        '2026-03-02,earth wash,60,34',
        '2026-03-03,earth wash,60,33',
      ),
    },
    'log.csv row 4, "after g" (D4): this row used about 27 ml, more than there was: 24 ml. Check both weights, the pot\'s size and left, and the density g/ml of the paint.',
  ),
  spoil(
    'log-over-pot',
    {
      pots: pots(',density g/ml', 'brick red,17,1.8', 'brick red,12,', 'earth wash,24,'),
      log: [...weighed('2026-03-01,brick red,50,17'), '2026-03-02,brick red,52,17'],
    },
    'log.csv row 3, "after g" (D3): this row used about 19.4 ml, more than there was: 17 ml. Check both weights, the pot\'s size and left, and the density g/ml of the paint.',
  ),
  spoil(
    'log-over-pot',
    {
      pots: pots('', 'brick red,17', 'brick red,17', 'earth wash,24'),
      log: used('2026-03-01,brick red,30', '2026-03-02,brick red,40', '2026-03-03,earth wash,27'),
    },
    'log.csv row 3, "used ml" (C3): this row used 40 ml, more than there was: 34 ml in 2 pots. Check the amount, the paint, and what the pots sheet says of it.',
    'log.csv row 4, "used ml" (C4): this row used 27 ml, more than there was: 24 ml. Check the amount, the paint, and what the pots sheet says of it.',
  ),
  // Before the day of the reading the pot may have been full.
  spoil(
    'log-over-pot',
    {
      pots: pots(',left,counted', 'brick red,17,20%,2026-03-10', 'earth wash,24,,'),
      log: used('2026-03-10,brick red,9', '2026-03-11,brick red,9'),
    },
    'log.csv row 3, "used ml" (C3): this row used 9 ml, more than there was: 3.4 ml. Check the amount, the paint, and what the pots sheet says of it.',
  ),
  spoil(
    'log-over-shelf',
    {
      pots: pots(',left', 'brick red,17,6 ml', 'earth wash,24,'),
      log: used('2026-03-03,brick red,5', '2026-03-01,brick red,4', '2026-03-02,brick red,3'),
    },
    'log.csv row 2, "used ml" (C2): up to this row the log has used 12 ml of this paint, and its pots held 6 ml. Add pots that came since; where left was read later than these rows, write that day into counted.',
  ),
  spoil(
    'heavier-than-full',
    {
      pots: pots(',empty g', 'brick red,17,12', 'earth wash,24,'),
      log: weighed('2026-03-01,brick red,63,62', '2026-03-01,brick red,64,62', '2026-03-01,earth wash,99,98'),
    },
    'log.csv row 3, "before g" (C3): "64" is more than the full pot could weigh, 63 g. Check both weights and the size.',
  ),
  spoil(
    'below-empty',
    {
      pots: pots(',empty g', 'brick red,17,12', 'earth wash,24,'),
      log: weighed('2026-03-01,brick red,13,12', '2026-03-01,brick red,13,11.5'),
    },
    'log.csv row 3, "after g" (D3): "11.5" is less than the empty pot weighs, 12 g. Check both weights.',
  ),
];

const progressCases: readonly ProblemCase[] = [
  spoil(
    'log-no-progress',
    {
      log: worked(
        '2026-03-01,brick red,first spears,,,0.4',
        '2026-03-02,brick red,first spears,,10,0.4',
        '2026-03-03,brick red,,1,,0.4',
        '2026-03-04,brick red,first spears,1,,0.4',
      ),
    },
    'log.csv row 3, "step" (D3): this row has unit and figures and no step, so it does not count as progress. Write unit, step and figures, all three, or at most the unit.',
    'log.csv row 4, "unit" (C4): this row has step and no unit and figures, so it does not count as progress. Write unit, step and figures, all three, or at most the unit.',
    'log.csv row 5, "figures" (E5): this row has unit and step and no figures, so it does not count as progress. Write unit, step and figures, all three, or at most the unit.',
  ),
  spoil(
    'log-other-paint',
    { log: worked('2026-03-01,earth wash,first spears,1,10,0.4') },
    'log.csv row 2, "paint" (B2): "earth wash" is not a paint of this step, so the row does not count as progress. Check step and paint; the step uses brick red. A paint used instead belongs in the swaps sheet.',
  ),
  spoil(
    'log-over-unit',
    {
      log: worked(
        '2026-03-01,brick red,first spears,1,10,0.4',
        '2026-03-02,brick red,first spears,1,10,0.5',
        '2026-03-03,brick red,first spears,1,5,0.4',
        '2026-03-04,brick red,first spears,1,5,0.3',
        '2026-03-05,earth wash,first spears,2,20,0.4',
      ),
    },
    'log.csv row 4, "figures" (E4): up to this row 25 figures have had this paint in this step, and the unit has 20. Log a step once, when all its coats are on; no more than the whole unit counts as progress.',
  ),
  spoil(
    'log-row-repeated',
    {
      log: [
        'date,paint,before g,after g,used ml',
        '2026-03-01,brick red,31.2,30.1,',
        '2026-03-01,brick red,,,0.5',
        '2026-03-01,brick red,,,0.5',
        '2026-03-01,Brick Red,31.2,30.1,',
      ],
    },
    'log.csv row 5, "date" (A5): the same stands in row 2 already. It counts twice: take one of the two out if it is the same work.',
  ),
];

export const logCases: readonly ProblemCase[] = [
  ...amountCases,
  ...littleCases,
  ...potCases,
  ...progressCases,
];
