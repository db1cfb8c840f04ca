import { describe, expect, it } from 'vitest';
import { attribute, tags } from '../../../src/sheets/read/read-tags.js';
import { slimStyles } from '../../../src/sheets/read/slim-styles.js';

describe('slimStyles', () => {
  it('keeps number formats and which cell style has which', () => {
    const xml = `<styleSheet><numFmts count="2"><numFmt numFmtId="164" formatCode="[&gt;9]0\\ \\m\\l;0"/><numFmt formatCode="&quot;\\&quot;0" numFmtId="165"></numFmt></numFmts>
      <fonts count="1"><font><sz val="11"/></font></fonts><cellStyleXfs count="1"><xf numFmtId="9"/></cellStyleXfs>
      <cellXfs count="3"><xf numFmtId="164" fontId="0" xfId="0"><alignment wrapText="1"/></xf><xf fontId="0"/><xf numFmtId="31"/></cellXfs></styleSheet>`;
    expect(slimStyles(xml)).toBe(
      '<styleSheet><numFmts><numFmt numFmtId="164" formatCode="[&gt;9]0&quot; &quot;&quot;m&quot;&quot;l&quot;;0"/><numFmt formatCode="&quot;\\&quot;0" numFmtId="165"/></numFmts><cellXfs><xf numFmtId="164"/><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>',
    );
  });

  it('gives the General format where there are no styles', () => {
    expect(slimStyles('')).toBe(
      '<styleSheet><numFmts></numFmts><cellXfs><xf numFmtId="0"/></cellXfs></styleSheet>',
    );
  });
});

describe('tags and attributes', () => {
  const xml = `<x:sheets><x:sheet name="a &gt; b &#38; &#x63; &what;" r:id='q"1' /><sheet\n name="d>e"></sheet></x:sheets>`;

  it('are found with or without a prefix', () => {
    expect(tags(xml, 'sheet')).toHaveLength(2);
    expect(tags(xml, 'shee')).toEqual([]);
  });

  it('are decoded', () => {
    const [first = '', second = ''] = tags(xml, 'sheet');
    expect(attribute(first, 'name')).toBe('a > b & c &what;');
    expect(attribute(first, '\\w+:id')).toBe('q"1');
    expect(attribute(second, 'name')).toBe('d>e');
    expect(attribute(second, 'id')).toBeUndefined();
  });
});
