// One case or more for each code of the swaps sheet and of steps that cover what came before, with the exact words.
import type { ProblemCase } from './problem-case.js';
import { spoil } from './spoil-sheets.js';

/** Two schemes that share some paints; bone and rust are there and used by none. */
const shelf = {
  pots: [
    'paint,size ml,kind',
    'brick red,17,',
    'earth wash,24,wash',
    'bone,17,',
    'rust,17,',
    'old steel,17,metallic',
  ],
  schemes: [
    'scheme,step,zone,layer,paint',
    'red line,1,whole,base coat,brick red',
    'red line,2,whole,wash,earth wash',
    'brown line,1,whole,base coat,brick red',
    'brown line,2,boots,base coat,earth wash',
  ],
  army: ['unit,figure,scheme,count', 'first spears,spearman,red line,20'],
} as const;

const hues = (count: number): readonly string[] => Array.from({ length: count }, (_, at) => `hue ${at}`);

const swaps = (code: string, rows: readonly string[], ...says: readonly string[]): ProblemCase =>
  spoil(code, { ...shelf, swaps: ['scheme,step,paint,instead', ...rows] }, ...says);

const rowCases: readonly ProblemCase[] = [
  spoil(
    'swap-of-other-scheme',
    { ...shelf, swaps: ['scheme,paint,instead,unit', 'brown line,brick red,bone,first spears'] },
    'swaps.csv row 2, "scheme" (A2): this unit is painted as "red line", not as "brown line". Leave one of the two cells blank.',
  ),
  swaps(
    'swap-of-nothing',
    [',,,bone', 'red line,,,bone'],
    'swaps.csv row 2, "paint" (C2): this row does not say what is swapped. Write the paint that is not used, or the step in which every paint is swapped.',
    'swaps.csv row 3, "paint" (C3): this row does not say what is swapped. Write the paint that is not used, or the step in which every paint is swapped.',
  ),
  swaps(
    'swap-for-itself',
    [',,brick red,Brick  Red'],
    'swaps.csv row 2, "instead" (D2): "Brick Red" is the very paint that it is to stand in for. Write another paint, or take the row out.',
  ),
  swaps(
    'unknown-paint',
    [',,brik red,bone', ',,brick red,bonne'],
    'swaps.csv row 2, "paint" (C2): no sheet of yours knows the paint "brik red". Add it to the pots, paints or offers sheet, or spell it as there: brick red.',
    'swaps.csv row 3, "instead" (D3): no sheet of yours knows the paint "bonne". Add it to the pots, paints or offers sheet, or spell it as there: bone.',
  ),
  swaps(
    'unknown-scheme',
    ['red lime,,brick red,bone'],
    'swaps.csv row 2, "scheme" (A2): the schemes sheet does not know "red lime". Add it there, or spell it as there: red line.',
  ),
  swaps(
    'unknown-step',
    ['red line,7,brick red,bone', 'red line,8,,bone'],
    'swaps.csv row 2, "step" (B2): "7" is not a step of its scheme. Write one of its steps: 1 or 2.',
    'swaps.csv row 3, "step" (B3): "8" is not a step of its scheme. Write one of its steps: 1 or 2.',
  ),
  swaps(
    'blank-cell',
    [',,brick red,'],
    'swaps.csv row 2, "instead" (D2): this cell is blank. Write a name, such as rust red.',
  ),
];

const columnCases: readonly ProblemCase[] = [
  spoil(
    'swap-not-narrowed',
    {
      ...shelf,
      swaps: [
        'scheme,paint,instead,for figure,for zone,figure,layer notes',
        'red line,brick red,bone,spearman,,,base coat',
        'brown line,brick red,rust,,boots,,',
      ],
    },
    'swaps.csv row 1, "for figure" (D1): a swap holds for every figure of its scheme and step, so this column is not read. Give what is meant a scheme or a step of its own and name that; if this is a note, let its header end in "notes".',
    'swaps.csv row 1, "for zone" (E1): a swap holds for every zone of its scheme and step, so this column is not read. Give what is meant a scheme or a step of its own and name that; if this is a note, let its header end in "notes".',
  ),
];

const togetherCases: readonly ProblemCase[] = [
  swaps(
    'swap-circle',
    [',,brick red,bone', ',,bone,rust', ',,rust,brick red'],
    'swaps.csv row 4, "instead" (D4): these swaps go in a circle: rust, brick red, bone, rust. Take one of the rows out; two paints that change places need rows for different steps.',
  ),
  // A row for all steps meets each of them.
  swaps(
    'swap-circle',
    ['red line,1,brick red,bone', 'red line,1,bone,rust', ',,rust,brick red'],
    'swaps.csv row 4, "instead" (D4): these swaps go in a circle: rust, brick red, bone, rust. Take one of the rows out; two paints that change places need rows for different steps.',
  ),
  // Of a long circle the first and the last are named.
  spoil(
    'swap-circle',
    {
      ...shelf,
      pots: [...shelf.pots, ...hues(20).map((hue) => `${hue},17,`)],
      swaps: ['paint,instead', ...hues(20).map((hue, at) => `${hue},hue ${(at + 1) % 20}`)],
    },
    'swaps.csv row 21, "instead" (B21): these swaps go in a circle: hue 19, hue 0, hue 1, hue 2, hue 3, hue 4 ... hue 14, hue 15, hue 16, hue 17, hue 18, hue 19. Take one of the rows out; two paints that change places need rows for different steps.',
  ),
  // A thousand are taken, in a chain too; one more is not, and then nothing is said that rests on what is not known.
  spoil(
    'too-many-swaps',
    {
      ...shelf,
      pots: [...shelf.pots, ...hues(1002).map((hue) => `${hue},17,`)],
      swaps: ['paint,instead', ...hues(1001).map((hue, at) => `${hue},hue ${at + 1}`)],
      log: ['date,paint,unit,step,figures,used ml', '2026-03-01,bone,first spears,1,5,0.4'],
    },
    'swaps.csv row 1002, "instead" (B1002): this is swap number 1001, and 1000 can be taken at once. Write what is painted now into the schemes sheet, and take those swaps out.',
  ),
  swaps(
    'swap-repeated',
    ['red line,1,brick red,bone', ',,brick red,bone', 'Red Line,1,Brick Red,rust'],
    'swaps.csv row 4, "instead" (D4): the same scheme, step and paint already stand in row 2. One paint can be used instead: take one of the two rows out.',
  ),
  swaps(
    'swap-of-other-kind',
    [',,brick red,old steel', 'red line,2,,bone'],
    'swaps.csv row 2, "instead" (D2): old steel is a metallic, while brick red is a colour. It is used as you say; check that it is meant.',
    'swaps.csv row 3, "instead" (D3): bone is a colour, while earth wash is a wash. It is used as you say; check that it is meant.',
  ),
  swaps(
    'swap-without-use',
    [',,brick red,bone', ',,bone,rust', ',,old steel,rust', ',9,,bone', 'red line,2,brick red,bone'],
    'swaps.csv row 4, "paint" (C4): this row swaps nothing, as no scheme has the paint "old steel" there. Check scheme, step and paint.',
    'swaps.csv row 5, "step" (B5): this row swaps nothing, as no scheme has a step 9 there. Check scheme, step and paint.',
    'swaps.csv row 6, "paint" (C6): this row swaps nothing, as no scheme has the paint "brick red" there. Check scheme, step and paint.',
  ),
  swaps(
    'swap-in-schemes',
    [',1,brick red,bone'],
    'swaps.csv row 2, "scheme" (A2): with no scheme given, this holds for step 1 of red line, brown line. Write the scheme if only one of them is meant.',
  ),
  // What is swapped everywhere need not be had; what is used instead must.
  spoil(
    'paint-not-had',
    {
      ...shelf,
      pots: ['paint,size ml,kind', 'earth wash,24,wash'],
      paints: ['paint', 'brick red', 'bone', 'rust'],
      swaps: ['paint,instead', 'brick red,bone', 'bone,rust'],
    },
    'swaps.csv row 3, "instead" (B3): no pot and no offer has the paint "rust". It will be listed as unmet; add a pot or an offer of it.',
  ),
];

const stepCases: readonly ProblemCase[] = [
  spoil(
    'sprayed-without-can',
    {
      ...shelf,
      schemes: [
        'scheme,step,zone,layer,paint,method',
        'red line,1,whole,primer,bone,airbrush',
        'red line,2,tunic,base coat,brick red,',
        'red line,3,whole,varnish,rust,',
        'red line,4,boots,varnish,rust,',
      ],
    },
    'schemes.csv row 4, "method" (F4): a varnish with no method counts as sprayed from a can, and "rust" comes in none. Write how it goes on, such as brush or airbrush.',
  ),
  spoil(
    'highlight-before-base',
    {
      ...shelf,
      schemes: [
        'scheme,step,zone,layer,paint',
        'red line,1,tunic,highlight,bone',
        'red line,1,tunic,edge highlight,rust',
        'red line,2,tunic,base coat,brick red',
        'red line,3,hands,highlight,bone',
        'red line,4,skin,base coat,bone',
        'brown line,1,whole,base coat,brick red',
        'brown line,2,tunic,highlight,bone',
        'brown line,3,tunic,base coat,rust',
        'brown line,4,boots,highlight,bone',
        'grey line,1,whole,midtone,brick red',
        'grey line,2,tunic,highlight,bone',
        'grey line,3,tunic,base coat,rust',
      ],
    },
    'schemes.csv row 2, "layer" (D2): this zone is highlighted in step 1, before its base coat in step 2. Steps are painted in the order of their numbers: renumber them if the base coat comes first.',
  ),
];

export const swapCases: readonly ProblemCase[] = [
  ...rowCases,
  ...columnCases,
  ...togetherCases,
  ...stepCases,
];
