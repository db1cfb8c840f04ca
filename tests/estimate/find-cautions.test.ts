import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { tellsOf } from '../../src/estimate/caution-words.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import { findCautions } from '../../src/estimate/find-cautions.js';
import type { Order } from '../../src/model/order.js';
import type { Paint, Step } from '../../src/model/sheets.js';
import type { Container } from '../../src/model/words.js';
import { makePaint, makeSheets, makeStep, makeUnit } from '../make-sheets.js';

interface Given {
  readonly step?: Partial<Step>;
  readonly items?: readonly string[];
  readonly paints?: readonly Paint[];
  readonly done?: number;
  readonly orders?: readonly (Pick<Order, 'lines'> | undefined)[];
}

function cautionsOf({ step = {}, items = [], paints = [], done = 0, orders = [] }: Given): readonly string[] {
  const sheets = makeSheets({
    steps: [makeStep({ step: 1, ...step })],
    extras: items.map((item) => ({ item, priceMinor: 300, serves: 50 })),
    paints,
    army: [makeUnit({ done })],
  });
  return findCautions(estimateArmy(sheets, registry), sheets, orders);
}

const buying = (paint: string, container: Container): Pick<Order, 'lines'> => ({
  lines: [
    {
      shop: 'Quay',
      offer: 'one',
      count: 1,
      priceMinor: 900,
      costMinor: 900,
      pots: [
        { paint, sizeMl: 400, count: 1, container, usableMl: 300, coversMl: 0, overMl: 300, costMinor: 900 },
      ],
    },
  ],
});

describe('the work', () => {
  it.each([
    [{ layer: 'primer' } as const, ['spray can']],
    [{ method: 'airbrush' } as const, ['airbrush']],
    [{}, ['brush']],
  ])('%j calls for %j', (step, cautions) => {
    expect(cautionsOf({ step })).toEqual(cautions);
  });

  it('calls for nothing once it is done, whatever stands among the extras', () => {
    expect(cautionsOf({ items: ['acetone', 'spray', 'superglue'], done: 1 })).toEqual([]);
  });
});

describe('what is bought', () => {
  it('calls for its caution, also a can for the shelf that no step sprays', () => {
    expect(cautionsOf({ orders: [undefined, buying('Chalk', 'can')] })).toEqual(['spray can', 'brush']);
    expect(cautionsOf({ done: 1, orders: [{ lines: [] }, buying('Chalk', 'can')] })).toEqual(['spray can']);
    expect(cautionsOf({ done: 1, orders: [buying('Enamel wash', 'pot')] })).toEqual(['solvent']);
    expect(cautionsOf({ done: 1, orders: [buying('Chalk', 'pot')] })).toEqual([]);
  });
});

describe('names', () => {
  it('of extras: one of each kind, said in the order of the kinds', () => {
    const items = ['plastic cement', 'matt spray', 'white spirit'];
    expect(cautionsOf({ items })).toEqual(['spray can', 'solvent', 'glue', 'brush']);
  });

  it('of paints, also what they are also called; none of a paint that no step needs', () => {
    const solvents = [
      makePaint({ paint: 'Slate', alsoCalled: ['dark oil wash'] }),
      makePaint({ paint: 'Lacquer', alsoCalled: [] }),
    ];
    expect(cautionsOf({ paints: solvents })).toEqual(['solvent', 'brush']);
    expect(cautionsOf({ paints: solvents.slice(1) })).toEqual(['brush']);
  });

  it('of paints as colours are called: no alarm', () => {
    for (const paint of ['marsh spirit green', 'petrole', 'bomb bay', 'super glue grey', 'spray of foam'])
      expect(cautionsOf({ step: { paints: [{ paint, share: 1 }] } }), paint).toEqual(['brush']);
  });
});

// Words of the trade, from memory.
describe('a solvent', () => {
  it.each([
    [
      'English',
      'white spirit, White-Spirit 1 l, mineral spirits, methylated spirit, meths, surgical spirit, odourless spirit',
    ],
    [
      'English',
      'Turps, turpentine substitute, acetone, rubbing alcohol, isopropanol, IPA 99%, Naphtha, benzine, lighter fluid',
    ],
    [
      'English',
      'Xylene, toluene, White thinner, airbrush thinner, thinners, paint solvent, brush cleaner, airbrush cleaner',
    ],
    [
      'English',
      'paint stripper, nail polish remover, enamel wash, enamel paints, lacquer thinner, oil wash, oil paint, oil brown wash, oils, linseed oil',
    ],
    [
      'German',
      'Terpentinersatz, Testbenzin, Waschbenzin, Feuerzeugbenzin, Verdünner, Nitroverdünnung, VERDUENNER, Lösungsmittel, Loesemittel',
    ],
    [
      'German',
      'Aceton, Brennspiritus, Isopropylalkohol, Pinselreiniger, Abbeizer, Nagellackentferner, Kunstharzlack, Emaillefarbe, Ölfarbe, Öl-Wash, Leinöl',
    ],
    [
      'French',
      'white-spirit, essence de térébenthine, essence F, diluant, solvant, acétone, alcool à brûler, dissolvant',
    ],
    [
      'French',
      "nettoyant pinceaux, nettoie-pinceaux, décapant, peinture à l’huile, lavis à l'huile, peinture émail, huile de lin",
    ],
    [
      'Spanish',
      'aguarrás, trementina, disolvente, diluyente, acetona, alcohol isopropílico, bencina, limpiador, limpiapinceles, esmalte, óleo, aceite de linaza, quitaesmalte',
    ],
    [
      'Italian',
      'acquaragia, trementina, diluente, solvente, acetone, alcool, alcol isopropilico, benzina, puliscipennelli, pulitore, sverniciatore, smalto, colori a olio, lavaggio ad olio, olio di lino',
    ],
    [
      'Dutch',
      'terpentine, terpentijn, wasbenzine, verdunner, oplosmiddel, aceton, spiritus, kwastenreiniger, afbijtmiddel, olieverf, olie-wash, lijnolie, emaillelak',
    ],
    [
      'Polish',
      'terpentyna, benzyna lakowa, rozcieńczalnik, rozpuszczalnik, aceton, spirytus, denaturat, alkohol izopropylowy, zmywacz, płyn do czyszczenia pędzli, farba olejna, emalia, olej lniany',
    ],
  ])('in %s: %s', (_, words) => {
    for (const word of words.split(', ')) expect(tellsOf(word, 'solvent'), word).toBe(true);
  });

  it('may be called so among extras alone', () => {
    for (const word of ['spirit', 'Spirits', 'petroleum', 'pétrole', 'paraffin', 'Kerosin']) {
      expect(tellsOf(word, 'solvent'), word).toBe(false);
      expect(tellsOf(word, 'solvent', 'solventAmongExtras'), word).toBe(true);
    }
  });

  it.each([
    'marsh spirit green',
    'spirit level',
    'capable hipage',
    "Turpin's coat",
    'petrol blue',
    'engine oil black',
    'olive oil green',
    'smalt blue',
    'pipe cleaners',
    'Pfeifenreiniger',
    'solvent-free varnish',
    'Brush soap',
    'mould line remover',
    'Verdun mud',
    'water',
    'pointed brush',
    'tufts of grass',
    'Metho blue',
    'a loss of colour',
  ])('is no "%s"', (name) => {
    expect(tellsOf(name, 'solvent', 'solventAmongExtras')).toBe(false);
  });
});

describe('glue', () => {
  it.each([
    [
      'English',
      'superglue, Super glue gel, cyanoacrylate, CA glue, plastic cement, polystyrene cement, poly cement, plastic glue, contact adhesive',
    ],
    [
      'German',
      'Sekundenkleber, Superkleber, Plastikkleber, Kunststoffkleber, Modellbaukleber, Cyanacrylat-Sekundenkleber',
    ],
    [
      'French',
      'super glue, colle cyanoacrylate, colle cyano, colle instantanée, colle plastique, colle à maquette, colle pour maquettes',
    ],
    [
      'Spanish',
      'superpegamento, pegamento instantáneo, pegamento de contacto, pegamento para plástico, cianoacrilato',
    ],
    [
      'Italian',
      'supercolla, colla istantanea, colla cianoacrilica, colla rapida, colla per plastica, colla per modellismo',
    ],
    ['Dutch', 'secondelijm, superlijm, plasticlijm, modelbouwlijm, contactlijm'],
    [
      'Polish',
      'superklej, klej cyjanoakrylowy, klej błyskawiczny, klej sekundowy, klej do plastiku, klej do modeli, klej modelarski',
    ],
  ])('in %s: %s', (_, words) => {
    for (const word of words.split(', ')) expect(tellsOf(word, 'glueAmongExtras'), word).toBe(true);
  });

  it.each([
    'PVA glue',
    'white glue',
    'Holzleim',
    'colle à bois',
    'klej do drewna',
    'cement dust',
    'glue brush',
  ])('that needs no caution: %s', (name) => {
    expect(tellsOf(name, 'glueAmongExtras')).toBe(false);
  });
});

describe('a spray', () => {
  it.each([
    'primer spray',
    'spray can',
    'aerosol',
    'rattle-can',
    'Sprühdose',
    'Spruehlack',
    'bombe de peinture',
    'bomboletta',
    'spuitbus',
    'aerozol',
    'sprej',
  ])('is "%s"', (name) => {
    expect(tellsOf(name, 'sprayAmongExtras')).toBe(true);
  });

  it.each(['spray bottle', 'spray booth', 'Sprühflasche', 'Sprayflasche', 'bombed ruins', 'brushes'])(
    'is no "%s"',
    (name) => {
      expect(tellsOf(name, 'sprayAmongExtras')).toBe(false);
    },
  );
});
