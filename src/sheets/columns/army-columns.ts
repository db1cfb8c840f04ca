// Columns: what is painted. In: nothing. Out: the columns of figures, zones and army.
import { heroicEyesMm } from '../../model/usual-build.js';
import { boxBuilds, builds, dresses, lengthBuilds, lengthOf } from '../../model/words.js';
import { choiceKind } from '../check/read-cell/read-choice.js';
import { batchSize, doneStep, figureCount, figuresPerBase } from '../check/read-cell/read-count.js';
import { listKind, nameKind } from '../check/read-cell/read-name.js';
import {
  baseHeight,
  eyeHeight,
  modelHeight,
  ownLength,
  rank,
  surface,
} from '../check/read-cell/read-number.js';
import { baseKind, boxKind } from '../check/read-cell/read-sides.js';
import { dressWords } from './choice-words.js';
import { free, money, needed } from './column.js';

export const figures = {
  figure: needed('figure', nameKind, {
    says: 'Name of the sculpt.',
    called:
      'sculpt, miniature, name, Figur, Modell, Miniatur, figurine, modèle, figura, modelo, miniatura, modello, figuur, figurka',
    example: 'spearman',
  }),
  eyeMm: free('eye mm', eyeHeight, {
    says: 'Height of the eyes above the soles, in millimetres. Needed unless long mm, box mm or model is given.',
    called:
      'eye height, Augenhöhe, hauteur des yeux, altura de los ojos, altezza occhi, altezza degli occhi, ooghoogte, wysokość oczu',
    example: '28',
  }),
  build: free('build', choiceKind('a build', [...builds, ...boxBuilds, ...lengthBuilds]), {
    says: 'How stout it is, as surface over a person’s (true scale): heroic mild 1.12, heroic 1.26, heroic strong 1.47, stocky 1.6, broad 2.2, giant 2.9. Or what long mm measures.',
    blank: {
      means: `heroic for eyes at ${heroicEyesMm.join(' to ')} mm, else true scale; of a box: closed`,
    },
    example: 'heroic',
  }),
  longMm: free('long mm', ownLength, {
    says: `The one length of some builds: ${lengthBuilds.map((build) => `${build}, ${lengthOf[build]}`).join('; ')}. They take no dress, creatures only wings, tail, saddle as kit.`,
    example: '60',
  }),
  dress: free('dress', choiceKind('a dress', dresses, dressWords), {
    says: 'What the body wears; none: kit alone.',
    blank: { means: 'clothed' },
    example: 'clothed',
  }),
  kit: free('kit', listKind, {
    says: 'What it carries or rides, parted by commas; an item named twice counts twice. Shields, at full size: small 60 cm across, round 80, large 100, both faces painted.',
    blank: { means: 'nothing' },
    called:
      'carries, equipment, gear, Ausrüstung, équipement, equipo, equipaggiamento, uitrusting, wyposażenie',
    example: 'weapon, round shield',
  }),
  base: free('base', baseKind, {
    isIn: 'mm',
    says: 'round 25, square 20, 25x50 or oval 60x35, in millimetres.',
    blank: { means: 'no base', isCounted: true },
    called: 'Sockel, socle, peana, basetta, voetje, podstawka',
    example: 'round 25',
  }),
  baseHighMm: free('base high mm', baseHeight, {
    says: 'Height of the base.',
    blank: { means: '3', value: 3 },
    called:
      'base height, Sockelhöhe, hauteur du socle, altura de la peana, altezza basetta, hoogte voetje, wysokość podstawki',
    example: '3',
  }),
  perBase: free('per base', figuresPerBase, {
    says: 'How many figures share one base.',
    blank: { means: '1', value: 1 },
    called: 'figures per base, je Sockel, par socle, por peana, per basetta, per voetje',
    example: '1',
  }),
  boxMm: free('box mm', boxKind, {
    says: 'Length, width, height of a vehicle, engine or building; a fourth number is the ridge of a pitched roof. Takes no dress, kit.',
    example: '90x30x20',
  }),
  model: free('model', listKind, {
    says: 'Your model files of it beside the sheets (STL, OBJ, 3MF), parted by commas.',
    blank: { means: 'none' },
    example: 'spearman.stl',
  }),
  modelHighMm: free('model high mm', modelHeight, {
    says: 'Height of the printed model; of several, of the first.',
    blank: { means: 'as its file says' },
    example: '34',
  }),
  areaCm2: free('area cm2', surface, {
    says: 'Your own total of body and kit, or hull, in cm2.',
    blank: { means: 'estimated', isCounted: true },
    example: '9.5',
  }),
  price: free('price', money, {
    isIn: 'money',
    says: 'Price of one unpainted figure.',
    blank: { means: 'unpriced', isCounted: true },
    called: 'price each, cost, Preis, Stückpreis, prix, precio, prezzo, prijs, cena',
    example: '1.80',
  }),
};

export const zones = {
  zone: needed('zone', nameKind, {
    says: 'A name of your own for a group of parts.',
    called: 'area, Bereich, zona, gebied, strefa',
    example: 'coat',
  }),
  parts: needed('parts', listKind, {
    says: 'The parts in it, parted by commas; a share such as 50% may follow a part.',
    called: 'Teile, parties, partes, parti, delen, części',
    example: 'front trunk, back trunk, upper arms 50%',
  }),
  figure: free('figure', nameKind, {
    says: 'The figure for which this holds.',
    blank: { means: 'any figure', isCounted: true },
    from: 'figures',
    called: 'model, Figur, figurine, figura, modello, figuur, figurka',
    example: 'spearman',
  }),
};

export const army = {
  unit: needed('unit', nameKind, {
    says: 'Name of the unit.',
    called:
      'squad, regiment, Einheit, Trupp, unité, régiment, unidad, regimiento, unità, reparto, eenheid, oddział, jednostka',
    example: 'first spears',
  }),
  figure: needed('figure', nameKind, {
    says: 'Name as in the figures sheet.',
    from: 'figures',
    called:
      'model, sculpt, miniature, Figur, Modell, Miniatur, figurine, modèle, figura, modelo, miniatura, modello, figuur, figurka',
    example: 'spearman',
  }),
  scheme: free('scheme', nameKind, {
    says: 'Name as in the schemes sheet.',
    blank: { means: 'the only scheme' },
    from: 'schemes',
    called:
      'colour scheme, color scheme, recipe, Schema, Farbschema, Rezept, schéma, recette, esquema, receta, ricetta, recept, schemat, przepis',
    example: 'red regiment',
  }),
  count: needed('count', figureCount, {
    says: 'How many figures.',
    called:
      'number, qty, quantity, how many, Anzahl, Stück, nombre, quantité, effectif, cantidad, número, quantità, numero, aantal, liczba, ilość',
    example: '20',
  }),
  batch: free('batch', batchSize, {
    says: 'How many are painted at one go.',
    blank: { means: '10', value: 10, isCounted: true },
    called: 'batch size',
    example: '10',
  }),
  done: free('done', doneStep, {
    says: 'The last step finished on all of them.',
    blank: { means: 'none', value: 0, isCounted: true },
    example: '0',
  }),
  priority: free('priority', rank, {
    says: 'Which unit comes first; lower is earlier.',
    blank: { means: 'the order of the rows', isCounted: true },
    called: 'prio, Priorität, priorité, prioridad, priorità, prioriteit, priorytet',
    example: '1',
  }),
};
