import { describe, expect, it } from 'vitest';
import { tidyWorksheet } from '../../../src/sheets/read/tidy-worksheet.js';

const tidy = (xml: string): string => tidyWorksheet(xml).xml;

describe('tidyWorksheet', () => {
  it.each([
    ['a number of a formula', '<c r="A1" s="1"><f>B1*2</f><v>3</v></c>', '<c r="A1" s="1"><v>3</v></c>'],
    [
      'a shared formula',
      '<c r="A1"><f t="shared" ref="A1:A2" si="0">B1</f><v>3</v></c>',
      '<c r="A1"><v>3</v></c>',
    ],
    ['its sharer', '<c r="A2"><f t="shared" si="0"/><v>4</v></c>', '<c r="A2"><v>4</v></c>'],
    ['text of a formula', '<c r="A1" t="str"><f>B1</f><v>x</v></c>', '<c r="A1" t="str"><v>x</v></c>'],
    ['an empty text of a formula', '<c r="A1" t="str"><f>""</f><v></v></c>', ''],
    ['an empty text of a shared formula', '<c r="A1" s="1" t="str"><f t="shared" si="0"/><v/></c>', ''],
    ['a blank styled cell', '<c r="A1" s="4"/><c r="B1"><v>1</v></c>', '<c r="B1"><v>1</v></c>'],
    ['a blank styled row', '<row r="1" s="4" customFormat="1"/>', ''],
    [
      'an ISO date',
      '<c r="A1" s="1" t="d"><v>2026-01-31</v></c>',
      '<c r="A1" s="1" t="str"><v>2026-01-31</v></c>',
    ],
  ])('leaves of %s what is stored', (_, xml, expected) => {
    expect(tidy(xml)).toBe(expected);
  });

  it.each([
    ['a formula that was never calculated', '<c r="A1"><f>B1*2</f></c>'],
    ['one with an empty value', '<c r="A1"><f>B1*2</f><v></v></c>'],
    ['an inline text', '<c r="A1" t="inlineStr"><is><t>f</t></is></c>'],
    ['columns', '<cols><col min="1" max="2" width="9"/></cols>'],
  ])('keeps %s', (_, xml) => {
    expect(tidy(xml)).toBe(xml);
  });

  it('numbers rows and cells that have no address', () => {
    const xml =
      '<row><c><v>1</v></c><c t="b"><v>1</v></c></row><row r="5"><c r="C5"><v>2</v></c><c><v>3</v></c></row><row><c><v>4</v></c></row>';
    expect(tidy(xml)).toBe(
      '<row r="1"><c r="A1"><v>1</v></c><c r="B1" t="b"><v>1</v></c></row><row r="5"><c r="C5"><v>2</v></c><c r="D5"><v>3</v></c></row><row r="6"><c r="A6"><v>4</v></c></row>',
    );
  });

  it('counts blank cells before it leaves them out', () => {
    expect(tidy('<row><c s="1"/><c><v>1</v></c></row>')).toBe('<row r="1"><c r="B1"><v>1</v></c></row>');
  });

  it('lists merged ranges', () => {
    const xml =
      '<sheetData/><mergeCells count="2"><mergeCell ref="A3:A7"/><mergeCell ref="B1:C1"/></mergeCells>';
    expect(tidyWorksheet(xml).merges).toEqual(['A3:A7', 'B1:C1']);
    expect(tidyWorksheet('<sheetData/>').merges).toEqual([]);
  });
});
