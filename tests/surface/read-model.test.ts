import { describe, expect, it } from 'vitest';
import { ModelError } from '../../src/surface/model-error.js';
import { readModel } from '../../src/surface/read-model.js';
import { openStore } from '../../src/surface/triangle-store.js';
import { makeZip } from '../sheets/read/make-files.js';
import {
  binaryStl,
  cube,
  modelXml,
  obj,
  objectXml,
  packModel,
  sphere,
  textStl,
  threeMf,
} from './make-models.js';

async function faultOf(bytes: Uint8Array, ending: string): Promise<string> {
  try {
    await readModel(bytes, ending);
  } catch (error) {
    if (error instanceof ModelError)
      return [error.fault, error.message, error.most].filter(Boolean).join(': ');
    throw error;
  }
  return 'none';
}

const ball = sphere(5, 8);
const text = (content: string): Buffer => Buffer.from(content);

describe('what cannot be measured', () => {
  const binary = binaryStl({ ball });
  const cut = <Bytes extends Buffer>(bytes: Bytes, share = 0.5): Buffer =>
    bytes.subarray(0, Math.floor(bytes.length * share));

  it.each([
    ['nothing', text(''), '.stl', 'it is empty'],
    ['a binary STL cut off', cut(binary), '.stl', 'it is cut off, with 111 of 224 triangles'],
    ['a text STL cut off', cut(textStl({ ball })), '.stl', 'it is cut off'],
    ['a text STL without its last line', text('solid a\nfacet\nvertex 1 2 3'), '.stl', 'it is cut off'],
    ['a table called .stl', text('unit,figure\nfirst spears,spearman\n'), '.stl', 'it is some other file'],
    ['text within a text STL', text('solid a\nhello\n'), '.stl', 'line 2 is no STL'],
    [
      'a facet of two corners',
      text('solid a\nfacet\nvertex 0 0 0\nvertex 0 0 1\nendfacet'),
      '.stl',
      'line 5 ends no triangle',
    ],
    [
      'a table called .obj',
      text('unit,figure\nfirst spears,spearman\n'),
      '.obj',
      'there is no surface in it',
    ],
    [
      'a face of two corners',
      text('v 0 0 0\nv 1 0 0\nf 1 2\n'),
      '.obj',
      'the face in line 3 has no three corners',
    ],
    [
      'a face of corners that come later',
      text('v 0 0 0\nv 1 0 0\nf 1 2 3\nv 0 1 0\n'),
      '.obj',
      'the face in line 3 has a corner that is not there',
    ],
    [
      'a face of corner 0',
      text('v 0 0 0\nv 1 0 0\nv 0 1 0\nf 0 1 2\n'),
      '.obj',
      'the face in line 4 has a corner that is not there',
    ],
    ['a binary file called .obj', binary, '.obj', 'it is some other file'],
    ['a text called .3mf', text('solid'), '.3mf', 'it is some other file'],
    ['a 3MF cut off', cut(threeMf({ ball })), '.3mf', 'it is cut off or spoilt'],
    [
      'a workbook called .3mf',
      makeZip({ 'xl/workbook.xml': '<workbook/>' }),
      '.3mf',
      'it is some other file',
    ],
    ['an encrypted 3MF', makeZip({ '_rels/.rels': '<r/>' }, 1), '.3mf', 'it is encrypted'],
    ['a 3MF of an unknown unit', threeMf({ ball }, 'furlong'), '.3mf', 'nobody knows the unit furlong'],
    [
      'a 3MF that builds nothing',
      packModel(modelXml('<resources/><build/>')),
      '.3mf',
      'there is no surface in it',
    ],
    [
      'a 3MF that builds what is not there',
      packModel(modelXml('<build><item objectid="7"/></build>')),
      '.3mf',
      'object 7 is not in it',
    ],
    [
      'a 3MF with half a transform',
      packModel(modelXml('<build><item objectid="7" transform="1 0 0"/></build>')),
      '.3mf',
      'an object of it stands nowhere',
    ],
    [
      'triangles of no area alone',
      text('v 0 0 0\nv 1 1 1\nv 2 2 2\nf 1 2 3\n'),
      '.obj',
      'there is no surface in it',
    ],
    [
      'corners that are no numbers alone',
      text('v 0 0 nan\nv 1 0 1\nv 2 2 2\nf 1 2 3\n'),
      '.obj',
      'there is no surface in it',
    ],
  ])('%s', async (_, bytes, ending, reason) => {
    expect(await faultOf(bytes, ending)).toBe(`broken: ${reason}`);
  });

  it('a corner that a triangle of a 3MF names and that is not there', async () => {
    for (const corner of ['9', '-1', '1.5', '']) {
      const mesh = `<vertices><vertex x="0" y="0" z="0"/><vertex x="1" y="0" z="0"/><vertex x="0" y="1" z="0"/></vertices><triangles><triangle v1="0" v2="1" v3="${corner}"/></triangles>`;
      const object = `<resources><object id="1"><mesh>${mesh}</mesh></object></resources><build><item objectid="1"/></build>`;
      expect(await faultOf(packModel(modelXml(object)), '.3mf'), corner).toBe(
        'broken: a triangle has a corner that is not there',
      );
    }
  });

  it('objects of a 3MF that hold themselves, or each other a million times', async () => {
    const around = '<object id="1"><components><component objectid="1"/></components></object>';
    const build = '<build><item objectid="1"/></build>';
    expect(await faultOf(packModel(modelXml(`<resources>${around}</resources>${build}`)), '.3mf')).toBe(
      'broken: its objects lie in one another without end',
    );
    const tens = Array.from({ length: 6 }, (_, level) => {
      const component = `<component objectid="${level + 2}"/>`;
      return `<object id="${level + 1}"><components>${component.repeat(10)}</components></object>`;
    });
    const deep = `${tens.join('')}${objectXml(7, 'seed', cube(1, 1))}`;
    expect(await faultOf(packModel(modelXml(`<resources>${deep}</resources>${build}`)), '.3mf')).toBe(
      'too large: more components: 20,000',
    );
  });

  it('a million named parts, of any format', async () => {
    const face = (name: number): string => `g part${name}\nf 1 2 3\n`;
    const many = `v 0 0 0\nv 1 0 0\nv 0 1 0\n${Array.from({ length: 1_000_000 }, (_, name) => face(name)).join('')}`;
    expect(await faultOf(text(many), '.obj')).toBe('too large: more named parts: 200');
    const fits = Object.fromEntries(Array.from({ length: 200 }, (_, at) => [`part${at}`, cube(1, 1)]));
    for (const [ending, write] of [
      ['.obj', obj],
      ['.stl', textStl],
      ['.3mf', threeMf],
    ] as const) {
      expect((await readModel(write(fits), ending)).mesh.parts).toHaveLength(200);
      expect(await faultOf(write({ ...fits, more: cube(1, 1) }), ending)).toBe(
        'too large: more named parts: 200',
      );
    }
  });

  it('a bomb: a 3MF that unpacks to more than a gigabyte', async () => {
    const bomb = packModel(modelXml(`<metadata>${' '.repeat(2 ** 20)}</metadata>`));
    // The directory says more than there is, which is told before anything is unpacked.
    const at = bomb.lastIndexOf(Buffer.from('PK\x01\x02', 'latin1'));
    bomb.writeUInt32LE(1600 * 2 ** 20, at + 24);
    expect(await faultOf(bomb, '.3mf')).toBe('too large: 1601 MB unpacked: 1000 MB');
  });

  it('more triangles than may be kept, at the edge', () => {
    const corners = cube(1, 1).flat(2);
    const fill = (most: number): (() => void) => {
      const store = openStore(4, most);
      return () => {
        for (let at = 0; at < 12; at += 1) store.add(corners, 9 * at);
      };
    };
    expect(fill(12)).not.toThrow();
    expect(fill(11)).toThrow(
      expect.objectContaining({ fault: 'too large', message: 'more triangles', most: '11' }),
    );
  });
});

describe('what is left out', () => {
  it('triangles without area and with corners that are no numbers, counted', async () => {
    const mesh = async (bytes: Uint8Array, ending: string) => {
      const { flat, unreal, corners } = (await readModel(bytes, ending)).mesh;
      return { flat, unreal, kept: corners.length / 9 };
    };
    const lines = 'v 0 0 0\nv 1 0 0\nv 0 1 0\nv 2 0 0\nv nan 0 0\nf 1 2 3\nf 1 2 4\nf 1 1 2\nf 1 2 5\n';
    expect(await mesh(text(lines), '.obj')).toEqual({ flat: 2, unreal: 1, kept: 1 });
    const spoilt = binaryStl({ body: cube(1, 1) });
    spoilt.writeFloatLE(Number.NaN, 84 + 12);
    spoilt.writeFloatLE(Infinity, 84 + 50 + 12);
    expect(await mesh(spoilt, '.stl')).toEqual({ flat: 0, unreal: 2, kept: 10 });
  });

  it('objects of a 3MF that hold others up, and what its build does not hold', async () => {
    const support = objectXml(2, 'prop', cube(3, 1)).replace('type="model"', 'type="support"');
    const resources = `${objectXml(1, 'figure', cube(1, 1))}${support}${objectXml(3, 'spare', cube(5, 1))}`;
    const build = '<item objectid="1"/><item objectid="2"/>';
    const bytes = packModel(modelXml(`<resources>${resources}</resources><build>${build}</build>`));
    expect((await readModel(bytes, '.3mf')).mesh.parts).toEqual(['figure']);
  });
});

describe('names and units', () => {
  const parts = { body: cube(2, 1), sword: cube(1, 1) };

  it.each([
    ['.stl', textStl(parts), ['body', 'sword']],
    ['.stl', binaryStl(parts), ['']],
    ['.obj', obj(parts), ['body', 'sword']],
    ['.obj', obj(parts, 'g'), ['body', 'sword']],
    ['.obj', text(`o figure\n${obj(parts, 'g')}`), ['body', 'sword']],
    ['.obj', text(obj(parts).toString().replaceAll(/^f/gm, 'g mesh\nf')), ['body', 'sword']],
    ['.3mf', threeMf(parts), ['body', 'sword']],
  ])('of parts in %s', async (ending, bytes, names) => {
    expect((await readModel(bytes, ending)).mesh.parts).toEqual(names);
  });

  it('an object of a 3MF without a name has that of the one around it', async () => {
    const resources =
      objectXml(1, '', cube(1, 1)) +
      '<object id="2" name="chest &amp; lid"><components><component objectid="1"/></components></object>';
    const bytes = packModel(
      modelXml(`<resources>${resources}</resources><build><item objectid="2"/></build>`),
    );
    expect((await readModel(bytes, '.3mf')).mesh.parts).toEqual(['chest & lid']);
  });

  it('objects of a 3MF may stand in parts of their own (Production Extension)', async () => {
    const main = modelXml(
      '<resources/><build><item objectid="4" p:path="/3D/Objects/guard.model" xmlns:p="http://schemas.microsoft.com/3dmanufacturing/production/2015/06"/></build>',
    );
    const other = modelXml(`<resources>${objectXml(4, 'guard', cube(1, 1))}</resources><build/>`);
    const bytes = packModel(main, { '3D/Objects/guard.model': other });
    expect((await readModel(bytes, '.3mf')).mesh.parts).toEqual(['guard']);
  });

  // 3MF Core Specification, 3.4: the units; millimetres where none is named.
  it.each([
    ['micron', 0.001],
    ['millimeter', 1],
    ['centimeter', 10],
    ['inch', 25.4],
    ['foot', 304.8],
    ['meter', 1000],
  ])('%s of a 3MF', async (unit, mm) => {
    expect((await readModel(threeMf(parts, unit), '.3mf')).unitMm).toBe(mm);
  });

  it('none of STL and OBJ, millimetres of a 3MF that names none', async () => {
    expect((await readModel(binaryStl(parts), '.stl')).unitMm).toBeUndefined();
    expect((await readModel(obj(parts), '.obj')).unitMm).toBeUndefined();
    const bare = modelXml(
      `<resources>${objectXml(1, 'a', cube(1, 1))}</resources><build><item objectid="1"/></build>`,
    );
    expect((await readModel(packModel(bare.replace(' unit="millimeter"', '')), '.3mf')).unitMm).toBe(1);
  });
});
