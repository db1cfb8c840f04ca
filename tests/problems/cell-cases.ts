// One case or more for each code of one column, one cell or one row, with the exact words.
import type { ProblemCase } from './problem-case.js';
import { spoil, spoilWorkbook } from './spoil-sheets.js';

const pots = (...rows: readonly string[]): readonly string[] => ['paint,size ml', 'earth wash,24', ...rows];
const schemes = (header: string, ...rows: readonly string[]): readonly string[] => [
  `scheme,step,zone,layer,paint${header}`,
  ...rows,
];
const settings = (...rows: readonly string[]): readonly string[] => ['name,value', ...rows];

const columnCases: readonly ProblemCase[] = [
  spoil(
    'missing-column',
    { pots: ['paint,notes', 'brick red,17', 'earth wash,24'] },
    'pots.csv, "size ml": there is no such column. Add it to the header row.',
  ),
  spoil(
    'missing-column',
    { pots: ['paint,sizes ml', 'brick red,17', 'earth wash,24'] },
    'pots.csv, "size ml": there is no such column. Add it to the header row, or rename "sizes ml" if that is meant.',
  ),
  spoil(
    'missing-column',
    { figures: ['figure,notes', 'spearman,tall', 'archer,small'] },
    'figures.csv, "eye mm": there is no such column. Add it to the header row.',
  ),
  spoil(
    'near-column',
    { pots: ['paint,size ml,prise,plaque', 'brick red,17,3.50,', 'earth wash,24,,'] },
    'pots.csv row 1, "prise" (C1): no column of this sheet is called so. Rename it "price" if that is meant; as it stands it is not read.',
  ),
  spoil(
    'missing-column',
    { pots: ['piant,size ml', 'brick red,17', 'earth wash,24'] },
    'pots.csv, "paint": there is no such column. Add it to the header row, or rename "piant" if that is meant.',
  ),
  spoil(
    'missing-column',
    { army: ['unit name,figure,count of all', 'first spears,spearman,20'] },
    'army.csv, "unit": there is no such column. Add it to the header row, or rename "unit name" if that is meant.',
    'army.csv, "count": there is no such column. Add it to the header row, or rename "count of all" if that is meant.',
  ),
  spoil(
    'near-column',
    { army: ['unit,figure,count,done step,prior', 'first spears,spearman,20,1,2'] },
    'army.csv row 1, "done step" (D1): no column of this sheet is called so. Rename it "done" if that is meant; as it stands it is not read.',
    'army.csv row 1, "prior" (E1): no column of this sheet is called so. Rename it "priority" if that is meant; as it stands it is not read.',
  ),
  // A header may name its currency as a price may.
  spoil(
    'other-currency',
    {
      pots: ['paint,size ml,Price (£)', 'brick red,17,3.50', 'earth wash,24,'],
      settings: ['name,value', 'currency,EUR'],
    },
    'pots.csv row 1, "Price (£)" (C1): "£" is not in EUR. Write every price in the currency of the settings sheet, or change it there.',
  ),
  ...['60%', '7.5 ml', '31.2 g', 'empty', '40', '"12,5"', 'half', '~40%', '3/4'].map((reading) =>
    spoil(
      'column-maybe-meant',
      { pots: ['paint,size ml,How full now,notes', `brick red,17,${reading},60%`, 'earth wash,24,,full'] },
      'pots.csv row 1, "How full now" (C1): this column is not read, and "left" counts as blank: full. Rename it "left" if that is meant, or let its header end in "notes" if not.',
    ),
  ),
  spoil(
    'column-maybe-meant',
    {
      pots: ['paint,size ml,Paid then,sort of', 'brick red,17,3.50,colour', 'earth wash,24,4.20,wash'],
      offers: [
        'shop,offer,price,paint,size ml,in it',
        'Quay,set,9,brick red,17,2',
        'Quay,set,,earth wash,24,1',
      ],
      shops: ['shop,parcel', 'Quay,€4.90'],
      army: ['unit,figure,count,painted up to', 'first spears,spearman,20,1'],
    },
    'pots.csv row 1, "Paid then" (C1): this column is not read, and "price" counts as blank: unpriced. Rename it "price" if that is meant, or let its header end in "notes" if not.',
    'pots.csv row 1, "sort of" (D1): this column is not read, and "kind" counts as blank: colour. Rename it "kind" if that is meant, or let its header end in "notes" if not.',
    'offers.csv row 1, "in it" (F1): this column is not read, and "pots" counts as blank: 1. Rename it "pots" if that is meant, or let its header end in "notes" if not.',
    'shops.csv row 1, "parcel" (B1): this column is not read, and "postage" counts as blank: 0. Rename it "postage" if that is meant, or let its header end in "notes" if not.',
    'army.csv row 1, "painted up to" (D1): this column is not read, and "done" counts as blank: none. Rename it "done" if that is meant, or let its header end in "notes" if not.',
  ),
  spoil(
    'blank-column-maybe-meant',
    { pots: ['paint,size ml,left,How full now', 'brick red,17,,60%', 'earth wash,24,,half'] },
    'pots.csv row 1, "How full now" (D1): this column is not read, and "left" is blank: full. Take the blank column out and rename this one "left" if that is meant, or let its header end in "notes" if not.',
  ),
  spoil(
    'missing-column',
    {
      offers: ['shop,offer,asks,paint,size ml', 'Quay,brick,3.50,brick red,17'],
      army: ['unit,figure,models,bases', 'first spears,spearman,20,10', 'bows,spearman,10,5'],
    },
    'offers.csv, "price": there is no such column. Add it to the header row, or rename "asks" if that is meant.',
    'army.csv, "count": there is no such column. Add it to the header row, or rename "models" or "bases" if that is meant.',
  ),
];

const brokenCases: readonly ProblemCase[] = [
  spoil(
    'blank-cell',
    { army: ['unit,figure,count', 'first spears,,20', ',spearman,'] },
    'army.csv row 2, "figure" (B2): this cell is blank. Write a name, such as spearman.',
    'army.csv row 3, "unit" (A3): this cell is blank. Write a name, such as first spears.',
    'army.csv row 3, "count" (C3): this cell is blank. Write a number of figures, such as 20.',
  ),
  spoilWorkbook(
    'error-value',
    {
      pots: [
        ['paint', 'size ml'],
        ['brick red', { error: '#N/A' }],
        ['earth wash', 24],
      ],
    },
    'army.xlsx, sheet pots, row 2, "size ml" (B2): "#N/A" is an error of the workbook, not a value. Mend its formula, or type a volume instead.',
  ),
  spoilWorkbook(
    'formula-without-result',
    {
      army: [
        ['unit', 'figure', 'count'],
        ['first spears', 'spearman', { formula: '4*5' }],
      ],
    },
    'army.xlsx, sheet army, row 2, "count" (C2): the formula "=4*5" has no stored result. Open the workbook in a spreadsheet program and save it, or type a number of figures instead.',
  ),
  spoilWorkbook(
    'date-not-wanted',
    {
      army: [
        ['unit', 'figure', 'count'],
        ['first spears', 'spearman', new Date('2026-04-03T00:00:00Z')],
      ],
    },
    'army.xlsx, sheet army, row 2, "count" (C2): "2026-04-03" is a date, where a number of figures is wanted. Format the cell as a number or as text, and type it again.',
  ),
  spoilWorkbook(
    'number-for-date',
    {
      pots: [
        ['paint', 'size ml', 'opened'],
        ['brick red', 17, 46095],
        ['earth wash', 24, ''],
      ],
    },
    'army.xlsx, sheet pots, row 2, "opened" (C2): "46095" is a plain number, where a date is wanted. Write it as 2026-03-14, or format the cell as a date.',
  ),
];

const numberCases: readonly ProblemCase[] = [
  spoil(
    'not-a-volume',
    { pots: ['paint,size ml,keep ml', 'brick red,"0,4 l",a dab', 'earth wash,0.8 fl oz,2 cl'] },
    'pots.csv row 2, "keep ml" (C2): "a dab" is not a volume. Write a number of millilitres, such as 12.5.',
    'pots.csv row 3, "size ml" (B3): "0.8 fl oz" is not a volume. Write a number of millilitres, such as 12.5.',
  ),
  spoil(
    'not-a-length',
    { figures: ['figure,eye mm,base,base high mm', 'spearman,28 mm,round 25 mm,3 ml', 'archer,28mm,,'] },
    'figures.csv row 2, "base high mm" (D2): "3 ml" is not a length. Write a number of millimetres, such as 3.',
  ),
  spoil(
    'not-a-base',
    { figures: ['figure,eye mm,base', 'spearman,28,25mm'] },
    'figures.csv row 2, "base" (C2): "25mm" is not a base. Write round 25, square 20, 25x50 or oval 60x35, in millimetres.',
  ),
  spoil(
    'not-a-volume',
    { pots: pots('brick red,1e3', 'brick red,0x11', 'brick red,Infinity') },
    'pots.csv row 3, "size ml" (B3): "1e3" is not a volume. Write a number of millilitres, such as 12.5.',
    'pots.csv row 4, "size ml" (B4): "0x11" is not a volume. Write a number of millilitres, such as 12.5.',
    'pots.csv row 5, "size ml" (B5): "Infinity" is not a volume. Write a number of millilitres, such as 12.5.',
  ),
  spoil(
    'not-a-weight',
    { pots: ['paint,size ml,left,empty g', 'brick red,17 ml,20 g,light', 'earth wash,24,20 g,14.5 g'] },
    'pots.csv row 2, "empty g" (D2): "light" is not a weight. Write a number of grams, such as 31.2.',
  ),
  spoilWorkbook(
    'not-a-volume',
    {
      pots: [
        ['paint', 'size ml'],
        ['brick red', { value: 0.5, numFmt: '0.0" fl oz"' }],
        ['earth wash', { value: 0.4, numFmt: '0.0" l"' }],
        ['bone', { value: 17, numFmt: '0" each"' }],
      ],
    },
    'army.xlsx, sheet pots, row 2, "size ml" (B2): "0.5 fl oz" is not a volume. Write a number of millilitres, such as 12.5.',
  ),
  spoil(
    'not-a-length',
    { figures: ['figure,eye mm', 'spearman,1 inch'] },
    'figures.csv row 2, "eye mm" (B2): "1 inch" is not a length. Write a number of millimetres, such as 28.',
  ),
  spoil(
    'not-an-area',
    { figures: ['figure,eye mm,area cm2', 'spearman,28,9 cm2', 'archer,28,9 cm'] },
    'figures.csv row 3, "area cm2" (C3): "9 cm" is not an area. Write a number of cm2, such as 9.5.',
  ),
  spoil(
    'not-a-number',
    { pots: ['paint,size ml,thin', 'brick red,17,half', 'earth wash,24,'] },
    'pots.csv row 2, "thin" (C2): "half" is not a number. Write a plain number, such as 0.5.',
  ),
  spoil(
    'not-a-count',
    { army: ['unit,figure,count', 'first spears,spearman,twenty'] },
    'army.csv row 2, "count" (C2): "twenty" is not a count. Write a whole number, such as 20.',
  ),
  spoil(
    'not-whole',
    { army: ['unit,figure,count', 'first spears,spearman,2.5'] },
    'army.csv row 2, "count" (C2): "2.5" is not a whole number. Write a whole number, such as 20.',
  ),
  spoil(
    'ambiguous-number',
    { pots: pots('brick red,"1,234"', 'brick red,1.234') },
    'pots.csv row 3, "size ml" (B3): "1,234" can be read in two ways. Write 1234 or 1.2340.',
    'pots.csv row 4, "size ml" (B4): "1.234" can be read in two ways. Write 1234 or 1.2340.',
  ),
  // Minor units by ISO 4217: KWD has three digits, so that 2.942 is what a price looks like; English parts thousands by commas.
  spoil(
    'ambiguous-number',
    {
      settings: settings('currency,KWD'),
      pots: ['paint,size ml,price', 'brick red,17,2.942', 'earth wash,24,"2,942"'],
    },
    'pots.csv row 3, "price" (C3): "2,942" can be read in two ways. Write 2942 or 2.9420.',
  ),
  spoil(
    'ambiguous-number',
    { schemes: schemes(',area %', 'red line,1,whole,base coat,brick red,0.6') },
    'schemes.csv row 2, "area %" (F2): "0.6" can be read in two ways. Write 60% or 0.6%.',
  ),
  spoil(
    'negative',
    { army: ['unit,figure,count', 'first spears,spearman,-20'] },
    'army.csv row 2, "count" (C2): "-20" is below zero, and a number of figures never is. Write it without the minus sign.',
  ),
  spoil(
    'negative',
    { pots: ['paint,size ml,price', 'brick red,17,-3.50', 'earth wash,24,0'] },
    'pots.csv row 2, "price" (C2): "-3.50" is below zero, and a price never is. Write it without the minus sign.',
  ),
  spoil(
    'negative',
    {
      settings: settings('again,-1.50'),
      offers: [
        'shop,offer,price,paint,size ml,available',
        'Quay,red,3,brick red,17,-1',
        'Quay,wash,3,earth wash,24,0',
      ],
    },
    'offers.csv row 2, "available" (F2): "-1" is below zero, and a number of offers never is. Write it without the minus sign.',
    'settings.csv row 2, "value" (B2): "-1.50" is below zero, and a price never is. Write it without the minus sign.',
  ),
  spoil(
    'zero',
    { pots: pots('brick red,0') },
    'pots.csv row 3, "size ml" (B3): "0" is zero, and a volume never is. Write the true value, or take the row out.',
  ),
  spoil(
    'eyes-high',
    { figures: ['figure,eye mm', 'spearman,280', 'archer,80', 'bust,"80,5"'] },
    'figures.csv row 2, "eye mm" (B2): eyes at "280" mm are higher than those of most figures. If a decimal point or comma was lost, write 28; a bust or a large scale may be right as it is.',
    'figures.csv row 4, "eye mm" (B4): eyes at "80,5" mm are higher than those of most figures. If a decimal point or comma was lost, write 8.05; a bust or a large scale may be right as it is.',
  ),
  spoil(
    'count-high',
    { army: ['unit,figure,count', 'first spears,spearman,5001', 'second spears,spearman,5000'] },
    'army.csv row 2, "count" (C2): "5001" figures are more than one unit usually has. Check the digits; if there are so many, leave it as it is.',
  ),
  spoil(
    'too-much',
    { pots: pots('brick red,40000'), figures: ['figure,eye mm', 'spearman,3000'] },
    'pots.csv row 3, "size ml" (B3): "40000" is more than the largest can, 2000 ml. Check the digits and the unit.',
    'figures.csv row 2, "eye mm" (B2): "3000" is more than the tallest figure, eyes at 300 mm. Check the digits and the unit.',
  ),
  spoil(
    'too-much',
    {
      schemes: schemes(',coats,thin', 'red line,1,whole,base coat,brick red,21,51'),
      army: ['unit,figure,count', 'first spears,spearman,1000001'],
    },
    'schemes.csv row 2, "coats" (F2): "21" is more than the thickest layer, 20 coats. Check the digits and the unit.',
    'schemes.csv row 2, "thin" (G2): "51" is more than the thinnest paint, 50 parts of water. Check the digits and the unit.',
    'army.csv row 2, "count" (C2): "1000001" is more than the largest army, 1000000 figures. Check the digits and the unit.',
  ),
  spoil(
    'too-little',
    { pots: pots('brick red,0.4'), figures: ['figure,eye mm', 'spearman,2.8'] },
    'pots.csv row 3, "size ml" (B3): "0.4" is less than the smallest pot, 0.5 ml. Check the digits and the unit.',
    'figures.csv row 2, "eye mm" (B2): "2.8" is less than the smallest figure, eyes at 3 mm. Check the digits and the unit.',
  ),
  spoil(
    'not-a-share',
    { schemes: schemes(',area %', 'red line,1,whole,base coat,brick red,half') },
    'schemes.csv row 2, "area %" (F2): "half" is not a share. Write a percentage, such as 60%.',
  ),
  spoil(
    'over-whole',
    { schemes: schemes(',area %', 'red line,1,whole,base coat,brick red,120%') },
    'schemes.csv row 2, "area %" (F2): "120%" is more than the whole. Write 100% at the most.',
  ),
];

const priceCases: readonly ProblemCase[] = [
  spoil(
    'not-a-price',
    { pots: ['paint,size ml,price', 'brick red,17,cheap', 'earth wash,24,3.5 or so'] },
    'pots.csv row 2, "price" (C2): "cheap" is not a price. Write an amount such as 3.50.',
    'pots.csv row 3, "price" (C3): "3.5 or so" is not a price. Write an amount such as 3.50.',
  ),
  spoil(
    'too-fine',
    { pots: ['paint,size ml,price', 'brick red,17,3.5051', 'earth wash,24,'] },
    'pots.csv row 2, "price" (C2): "3.5051" has more digits after the point than EUR. Round it to the smallest coin.',
  ),
  spoil(
    'too-fine',
    {
      settings: settings('currency,JPY'),
      pots: ['paint,size ml,price', 'brick red,17,350.5', 'earth wash,24,'],
    },
    'pots.csv row 2, "price" (C2): "350.5" has more digits after the point than JPY. Round it to the smallest coin.',
  ),
  spoil(
    'other-currency',
    { pots: ['paint,size ml,price', 'brick red,17,$3.50', 'earth wash,24,3.50 GBP', 'earth wash,24,€4'] },
    'pots.csv row 2, "price" (C2): "$3.50" is not in EUR. Write every price in the currency of the settings sheet, or change it there.',
    'pots.csv row 3, "price" (C3): "3.50 GBP" is not in EUR. Write every price in the currency of the settings sheet, or change it there.',
  ),
  // A format that writes the settings' own currency, or none, is no question; nor is one that writes a word.
  spoilWorkbook(
    'other-currency',
    {
      pots: [
        ['paint', 'size ml', 'price'],
        ['brick red', 17, { value: 3.5, numFmt: '"$"#,##0.00' }],
        ['earth wash', { value: 24, numFmt: '0" ml"' }, { value: 4.2, numFmt: '#,##0.00 [$€-407]' }],
        ['bone', 17, { value: 3, numFmt: '#,##0.00" GBP"' }],
        ['oat', 17, { value: 2.942, numFmt: '[$KWD] 0.000' }],
      ],
      army: [
        ['unit', 'figure', 'count'],
        ['first spears', 'spearman', { value: 20, numFmt: '"$"0' }],
      ],
    },
    'army.xlsx, sheet pots, row 2, "price" (C2): "3.5 $" is not in EUR. Write every price in the currency of the settings sheet, or change it there.',
    'army.xlsx, sheet pots, row 4, "price" (C4): "3 GBP" is not in EUR. Write every price in the currency of the settings sheet, or change it there.',
    'army.xlsx, sheet pots, row 5, "price" (C5): "2.942 KWD" is not in EUR. Write every price in the currency of the settings sheet, or change it there.',
  ),
  spoil(
    'not-a-share',
    { schemes: schemes(',share', 'red line,1,whole,base coat,brick red,half') },
    'schemes.csv row 2, "share" (F2): "half" is not a share. Write a percentage such as 50%, or parts such as 2.',
  ),
  spoil(
    'offer-for-nothing',
    { offers: ['shop,offer,price,paint,size ml', 'Quay,brick,0,brick red,17'] },
    'offers.csv row 2, "price" (C2): "0" is no price for an offer. Write what it costs, or take the offer out.',
  ),
];

const dateCases: readonly ProblemCase[] = [
  spoil(
    'not-a-date',
    { pots: ['paint,size ml,opened', 'brick red,17,last spring', 'earth wash,24,'] },
    'pots.csv row 2, "opened" (C2): "last spring" is not a date. Write it as 2026-03-14.',
  ),
  spoil(
    'no-such-day',
    { pots: ['paint,size ml,opened', 'brick red,17,2026-02-29', 'earth wash,24,31.4.2026'] },
    'pots.csv row 2, "opened" (C2): "2026-02-29" is a day that no calendar has. Write it as 2026-03-14.',
    'pots.csv row 3, "opened" (C3): "31.4.2026" is a day that no calendar has. Write it as 2026-03-14.',
  ),
  spoil(
    'day-or-month-first',
    { pots: ['paint,size ml,opened', 'brick red,17,05/06/2026', 'earth wash,24,17/05/2026'] },
    'pots.csv row 2, "opened" (C2): "05/06/2026" could be two days. Write 2026-05-06 or 2026-06-05.',
  ),
  spoil(
    'date-ahead',
    {
      settings: settings('date,2026-05-01'),
      pots: [
        'paint,size ml,opened,counted',
        'brick red,17,2026-05-02,2027-01-01',
        'earth wash,24,2026-05-01,',
      ],
    },
    'pots.csv row 2, "opened" (C2): "2026-05-02" lies after 2026-05-01, the day of this plan. Check the year and the day.',
    'pots.csv row 2, "counted" (D2): "2027-01-01" lies after 2026-05-01, the day of this plan. Check the year and the day.',
  ),
];

const wordCases: readonly ProblemCase[] = [
  spoil(
    'not-a-choice',
    {
      schemes: schemes(
        ',method',
        'red line,1,whole,bsae coat,brick red,',
        'red line,2,all,varnish,earth wash,roller',
      ),
    },
    'schemes.csv row 2, "layer" (D2): "bsae coat" is none of the choices. Write base coat.',
    'schemes.csv row 3, "method" (F3): "roller" is none of the choices. Write brush, flood, drybrush, sponge, spread, airbrush or spray can.',
  ),
  spoil(
    'not-a-choice',
    { pots: ['paint,size ml,ordered', 'brick red,17,soon', 'earth wash,24,Yes'] },
    'pots.csv row 2, "ordered" (C2): "soon" is none of the choices. Write yes or no.',
  ),
  spoil(
    'not-a-code',
    { pots: ['paint,size ml,code', 'brick red,17,6.29104E+12', 'earth wash,24,'] },
    'pots.csv row 2, "code" (C2): "6.29104E+12" is not a code of 8, 12, 13 or 14 digits. Copy the number under the bar code, as text; until then no code is shown.',
  ),
  spoil(
    'wrong-check-digit',
    {
      pots: ['paint,size ml,code', 'brick red,17,2000310000218', 'earth wash,24,2000310000217'],
      offers: ['shop,offer,price,paint,size ml,code', 'Quay,brick,3,brick red,17,20003100001 3'],
    },
    'pots.csv row 2, "code" (C2): "2000310000218" has a wrong digit, as its last should be 7. Compare it with the number under the bar code.',
    'offers.csv row 2, "code" (F2): "20003100001 3" has a wrong digit, as its last should be 1. Compare it with the number under the bar code.',
  ),
  spoil(
    'not-a-colour',
    { pots: ['paint,size ml,hex', 'brick red,17,red', 'earth wash,24,#12345'] },
    'pots.csv row 2, "hex" (C2): "red" is not a colour. Write six hex digits, such as #8a2b2b.',
    'pots.csv row 3, "hex" (C3): "#12345" is not a colour. Write six hex digits, such as #8a2b2b.',
  ),
  spoil(
    'not-a-base',
    { figures: ['figure,eye mm,base', 'spearman,28,25', 'archer,28,round 25x30'] },
    'figures.csv row 2, "base" (C2): "25" is not a base. Write round 25, square 20, 25x50 or oval 60x35, in millimetres.',
    'figures.csv row 3, "base" (C3): "round 25x30" is not a base. Write round 25, square 20, 25x50 or oval 60x35, in millimetres.',
  ),
  spoil(
    'not-a-box',
    { figures: ['figure,eye mm,box mm', 'spearman,28,', 'engine,,90x30'] },
    'figures.csv row 3, "box mm" (C3): "90x30" is not a box. Write length, width and height in millimetres, such as 90x30x20; of a pitched roof a fourth number, up to the ridge.',
  ),
  spoil(
    'not-a-reading',
    { pots: ['paint,size ml,left', 'brick red,17,some', 'earth wash,24,a lot'] },
    'pots.csv row 2, "left" (C2): "some" does not say how much is left. Write 60%, 7.5 ml, full, empty or a weight such as 31.2 g.',
    'pots.csv row 3, "left" (C3): "a lot" does not say how much is left. Write 60%, 7.5 ml, full, empty or a weight such as 31.2 g.',
  ),
  spoil(
    'left-without-unit',
    { pots: ['paint,size ml,left', 'brick red,17,7.5', 'earth wash,24,empty'] },
    'pots.csv row 2, "left" (C2): "7.5" does not say of what. Write 7.5 ml, 7.5% or 7.5 g.',
  ),
  spoil(
    'unknown-kit',
    { figures: ['figure,eye mm,kit', 'spearman,28,"weapon, rownd shield; lantern"'] },
    'figures.csv row 2, "kit" (C2): "rownd shield" is not a piece of kit. Write round shield.',
    'figures.csv row 2, "kit" (C2): "lantern" is not a piece of kit. Write weapon or bow; small shield, round shield or large shield; cloak; horse, barding or saddle; wings or tail.',
  ),
  spoil(
    'unknown-kit',
    { figures: ['figure,eye mm,kit', 'spearman,28,"weapn, Round-Shield"', 'page,28,none'] },
    'figures.csv row 2, "kit" (C2): "weapn" is not a piece of kit. Write weapon.',
  ),
  spoil(
    'unknown-part',
    { zones: ['zone,parts', 'coat,"front trunc, back trunk"'] },
    'zones.csv row 2, "parts" (B2): "front trunc" is not a part of a figure. Write front trunk.',
  ),
  spoil(
    'unknown-part',
    { zones: ['zone,parts', 'coat,"chest, back trunk"', 'shields,shield'] },
    'zones.csv row 2, "parts" (B2): "chest" is not a part of a figure. Write a part of the body (head, neck, front trunk, back trunk, buttocks, groin, upper arms, forearms, hands, thighs, lower legs, feet), a piece of kit (weapon, bow, small shield, round shield, large shield, cloak, horse, barding, wings, tail, saddle), hide, hull, base top or base edge.',
    'zones.csv row 3, "parts" (B3): "shield" is not a part of a figure. Write large shield, round shield or small shield.',
  ),
];

const settingCases: readonly ProblemCase[] = [
  spoil(
    'not-a-currency',
    {
      settings: settings('currency,euro'),
      pots: ['paint,size ml,price', 'brick red,17,€ 3.50', 'earth wash,24,0.001'],
      offers: [
        'shop,offer,price,paint,size ml',
        'Quay,red,12.90,brick red,17',
        'Quay,pair,7.1255 EUR,brick red,17',
        'Quay,pair,,earth wash,24',
      ],
      shops: ['shop,postage,free from,least order', 'Quay,3.90,30,10'],
      extras: ['item,price,serves', 'brush,6.50,80'],
    },
    'settings.csv row 2, "value" (B2): "euro" is not a currency. Write the three letters of ISO 4217, such as EUR.',
  ),
  spoil(
    'unknown-setting',
    { settings: settings('curency,EUR', 'colour,red', 'brush wet flim,50') },
    'settings.csv row 2, "name" (A2): "curency" is not a setting. Write currency, date, locale, sure %, buy, again, restock or the name of an assumption; near it is currency.',
    'settings.csv row 3, "name" (A3): "colour" is not a setting. Write currency, date, locale, sure %, buy, again, restock or the name of an assumption.',
    'settings.csv row 4, "name" (A4): "brush wet flim" is not a setting. Write currency, date, locale, sure %, buy, again, restock or the name of an assumption; near it is brush wet film.',
  ),
  spoil(
    'not-a-currency',
    {
      settings: settings('currency,€'),
      pots: ['paint,size ml,price', 'brick red,17,$3.5051', 'earth wash,24,3'],
    },
    'settings.csv row 2, "value" (B2): "€" is not a currency. Write the three letters of ISO 4217, such as EUR.',
  ),
  spoil(
    'not-a-locale',
    { settings: settings('locale,english') },
    'settings.csv row 2, "value" (B2): "english" is not a locale. Write a language tag, such as en or de-AT.',
  ),
  spoil(
    'not-a-range',
    { settings: settings('painter,heavy', 'relief,1 / 2', 'density,1 to 2') },
    'settings.csv row 2, "value" (B2): "heavy" is not a value for an assumption. Write one number, or low / likely / high such as 30 / 50 / 80.',
    'settings.csv row 3, "value" (B3): "1 / 2" is not a value for an assumption. Write one number, or low / likely / high such as 30 / 50 / 80.',
    'settings.csv row 4, "value" (B4): "1 to 2" is not a value for an assumption. Write one number, or low / likely / high such as 30 / 50 / 80.',
  ),
  spoil(
    'range-out-of-order',
    { settings: settings('Brush_Wet Film,80 / 50 / 30') },
    'settings.csv row 2, "value" (B2): "80 / 50 / 30" does not rise from low over likely to high. Write the smallest first, such as 30 / 50 / 80.',
  ),
];

const rowCases: readonly ProblemCase[] = [
  spoil(
    'pots-of-two-counts',
    {
      pots: ['paint,size ml,left,pots', 'brick red,17,"2 full, 1 half",2', 'earth wash,2x 24 ml,,3'],
    },
    'pots.csv row 2, "left" (C2): "2 full, 1 half" is not as many pots as "2" in this row. Say in one way only how many there are.',
    'pots.csv row 3, "size ml" (B3): "2x 24 ml" is not as many pots as "3" in this row. Say in one way only how many there are.',
  ),
  spoil(
    'left-over-size',
    { pots: ['paint,size ml,left', 'brick red,17,18 ml', 'earth wash,24,24 ml'] },
    'pots.csv row 2, "left" (C2): "18 ml" is more than the whole pot, 17 ml. Check both numbers.',
  ),
  spoil(
    'empty-missing',
    { pots: ['paint,size ml,left,empty g', 'brick red,17,20 g,', 'earth wash,24,30 g,12'] },
    'pots.csv row 2, "empty g" (D2): a weight in "left" tells nothing without the weight of the empty pot. Weigh an empty pot of the same kind and write its grams, such as 14.5.',
  ),
  spoil(
    'empty-missing',
    { pots: ['paint,size ml,left', 'brick red,17,20 g', 'earth wash,24,'] },
    'pots.csv row 2, "empty g": a weight in "left" tells nothing without the weight of the empty pot. Weigh an empty pot of the same kind and write its grams, such as 14.5.',
  ),
  spoil(
    'below-empty',
    { pots: ['paint,size ml,left,empty g', 'brick red,17,11.9 g,12', 'earth wash,24,12 g,12'] },
    'pots.csv row 2, "left" (C2): "11.9 g" is less than the empty pot weighs, 12 g. Check both weights.',
  ),
  spoil(
    'heavier-than-full',
    { pots: ['paint,size ml,left,empty g', 'brick red,17,63.1 g,12', 'earth wash,24,84 g,12'] },
    'pots.csv row 2, "left" (C2): "63.1 g" is more than the full pot could weigh, 63 g. Check both weights and the size.',
  ),
  spoil(
    'left-of-ordered',
    { pots: ['paint,size ml,left,ordered', 'brick red,17,60%,yes', 'earth wash,24,full,yes'] },
    'pots.csv row 2, "left" (C2): "60%" is left aside, as a pot on its way counts as full. Leave one of the two cells blank.',
  ),
  spoil(
    'without-base',
    { figures: ['figure,eye mm,base,base high mm,per base', 'spearman,28,,4,2', 'archer,28,round 25,4,2'] },
    'figures.csv row 2, "base high mm" (D2): "4" counts for nothing, as this figure has no base. Write its base, or leave this cell blank.',
    'figures.csv row 2, "per base" (E2): "2" counts for nothing, as this figure has no base. Write its base, or leave this cell blank.',
  ),
  spoil(
    'no-eye-height',
    { figures: ['figure,eye mm,box mm,build', 'spearman,,,closed', 'engine,,90x30x20,'] },
    'figures.csv row 2, "eye mm" (B2): without a box, a figure needs the height of its eyes. Measure from the soles to the eyes and write millimetres, such as 28.',
  ),
  spoil(
    'box-with-body',
    {
      figures: ['figure,eye mm,box mm,dress,kit', 'spearman,28,,,', 'engine,,90x30x20,clothed,weapon'],
    },
    'figures.csv row 3, "dress" (D3): a box takes no dress. Leave this cell blank; give a crew or a rider a row of its own.',
    'figures.csv row 3, "kit" (E3): a box takes no kit. Leave this cell blank; give a crew or a rider a row of its own.',
  ),
  spoil(
    'box-with-body',
    {
      figures: [
        'figure,eye mm,long mm,build,dress,kit',
        'spearman,28,,,,',
        'wyrm,,90,beast,bare,"saddle, weapon, bow"',
        'ram,,90,engine,none,saddle',
        'drake,,120,winged,,saddle',
      ],
    },
    'figures.csv row 3, "dress" (E3): a beast takes no dress. Leave this cell blank; give a crew or a rider a row of its own.',
    'figures.csv row 3, "kit" (F3): a beast takes no weapon or bow. Leave this cell blank; give a crew or a rider a row of its own.',
    'figures.csv row 4, "kit" (F4): an engine takes no saddle. Leave this cell blank; give a crew or a rider a row of its own.',
  ),
  spoil(
    'no-length',
    {
      figures: [
        'figure,eye mm,long mm,build',
        'spearman,28,,',
        'wyrm,,,beast',
        'drake,,,winged',
        'hut,,60,house',
      ],
    },
    'figures.csv row 3, "long mm" (C3): what is built as "beast" is measured by one length. Measure from the ground to the top of its back and write millimetres, such as 60.',
    'figures.csv row 4, "long mm" (C4): what is built as "winged" is measured by one length. Measure from wing tip to wing tip and write millimetres, such as 60.',
  ),
  spoil(
    'length-unused',
    {
      figures: [
        'figure,eye mm,long mm,box mm,build',
        'spearman,28,60,,',
        'cart,,60,60x30x25,closed',
        'giant,90,,,giant',
      ],
    },
    'figures.csv row 2, "long mm" (C2): "60" counts for nothing, as this figure is not measured by one length. Write beast, winged, serpent, engine, wall, house or hedge into "build", or leave this cell blank.',
    'figures.csv row 3, "long mm" (C3): "60" counts for nothing, as this figure is not measured by one length. Write beast, winged, serpent, engine, wall, house or hedge into "build", or leave this cell blank.',
  ),
  spoil(
    'ridge-under-eaves',
    { figures: ['figure,eye mm,box mm', 'spearman,28,', 'hut,,80x60x40x39', 'barn,,80x60x40x40'] },
    'figures.csv row 3, "box mm" (C3): "80x60x40x39" has its ridge under its eaves. Write length, width, height to the eaves, height to the ridge, both from the ground, such as 80x60x40x65.',
  ),
  spoil(
    'wrong-build',
    {
      figures: [
        'figure,eye mm,box mm,build',
        'spearman,28,,Closed',
        'engine,,90x30x20,heroic',
        'cart,,60x30x25,open-frame',
        'giant,60,,broad',
      ],
    },
    'figures.csv row 2, "build" (D2): "Closed" is no build of a body (true scale, heroic mild, heroic, heroic strong, stocky, broad or giant). Write one of these, or leave this cell blank.',
    'figures.csv row 3, "build" (D3): "heroic" is no build of a box (closed or open frame). Write one of these, or leave this cell blank.',
  ),
  spoil(
    'no-surface',
    { figures: ['figure,eye mm,dress,base', 'spearman,28,,', 'ghost,28,none,', 'rock,28,none,round 25'] },
    'figures.csv row 3, "dress" (C3): the figure "ghost" has nothing that could be painted. Give it a dress, kit, a base or a box.',
  ),
];

export const cellCases: readonly ProblemCase[] = [
  ...columnCases,
  ...brokenCases,
  ...numberCases,
  ...priceCases,
  ...dateCases,
  ...wordCases,
  ...settingCases,
  ...rowCases,
];
