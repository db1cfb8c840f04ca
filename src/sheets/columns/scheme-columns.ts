// Columns: how it is painted. In: nothing. Out: the columns of schemes and swaps.
import { layers, methods } from '../../model/words.js';
import { choiceKind } from '../check/read-cell/read-choice.js';
import { coatCount, stepNumber } from '../check/read-cell/read-count.js';
import { nameKind } from '../check/read-cell/read-name.js';
import { thinning } from '../check/read-cell/read-number.js';
import { areaShare, mixShare } from '../check/read-cell/read-share.js';
import { layerWords } from './choice-words.js';
import { free, needed } from './column.js';

export const schemes = {
  scheme: needed('scheme', nameKind, {
    fillsDown: 'always',
    says: 'Name of the scheme.',
    called:
      'colour scheme, color scheme, recipe, Schema, Farbschema, Rezept, schéma, recette, esquema, receta, ricetta, recept, schemat, przepis',
    example: 'red regiment',
  }),
  step: free('step', stepNumber, {
    says: 'Whole number; steps are painted in this order.',
    blank: { means: 'one more than the row above in its scheme' },
    called: 'Schritt, étape, paso, passo, stap, krok',
    example: '1',
  }),
  zone: needed('zone', nameKind, {
    unless: 'like',
    says: 'What is painted: a part, a ready-made zone or one of your own; several, parted by commas, are a row each.',
    called: 'where, part, Bereich, Teil, partie, zona, parte, gebied, deel, strefa, część',
    example: 'tunic',
  }),
  layer: needed('layer', choiceKind('a layer', layers, layerWords), {
    unless: 'like',
    says: 'What goes on.',
    called: 'Schicht, couche, capa, strato, laag, warstwa',
    example: 'base coat',
  }),
  paint: needed('paint', nameKind, {
    unless: 'like',
    says: 'Name of the paint.',
    from: 'paints',
    called: 'colour, color, Farbe, peinture, couleur, pintura, colore, verf, kleur, farba, kolor',
    example: 'brick red',
  }),
  coats: free('coats', coatCount, {
    says: 'How many coats.',
    blank: { means: 'as colours ask, else as usual for the layer' },
    called:
      'number of coats, Aufträge, Anstriche, nombre de couches, número de capas, capas, mani, lagen, liczba warstw',
    example: '2',
  }),
  method: free('method', choiceKind('a method', methods), {
    says: 'How it goes on.',
    blank: { means: 'as usual for the layer' },
    called:
      'technique, Methode, Technik, méthode, método, técnica, metodo, tecnica, techniek, metoda, technika',
    example: 'brush',
  }),
  area: free('area %', areaShare, {
    says: 'How much of the zone is covered.',
    blank: { means: 'as usual for the layer' },
    called: 'Fläche, superficie, oppervlak, powierzchnia',
    example: '60',
  }),
  thin: free('thin', thinning, {
    says: 'Parts of water to one part of paint.',
    blank: { means: 'as for the paint, else as usual for the layer' },
    called: 'thinning, dilution, Verdünnung, dilución, diluizione, verdunning, rozcieńczenie',
    example: '0.5',
  }),
  share: free('share', mixShare, {
    says: 'In a mix: this paint as 50% or in parts such as 2.',
    blank: { means: 'the only paint' },
    called: 'proportion, Anteil, proporción, quota, aandeel, udział',
    example: '50%',
  }),
  like: free('like', nameKind, {
    fillsDown: 'always',
    says: 'The scheme that this one begins as; its rows then say only what differs in a zone, layer or step, or is new. The paint none leaves out.',
    blank: { means: 'none, it is written out' },
    from: 'schemes',
    called: 'begins like, based on, wie, basiert auf, comme, como, come, zoals, jak',
    example: 'levy',
  }),
};

export const swaps = {
  scheme: free('scheme', nameKind, {
    says: 'The scheme for which this holds.',
    blank: { means: 'every scheme' },
    from: 'schemes',
    called: 'recipe, Schema, schéma, esquema, schemat',
    example: 'red regiment',
  }),
  step: free('step', stepNumber, {
    says: 'The step for which this holds.',
    blank: { means: 'every step' },
    called: 'Schritt, étape, paso, passo, stap, krok',
    example: '2',
  }),
  paint: free('paint', nameKind, {
    says: 'The paint that is not used.',
    blank: { means: 'every paint of the step' },
    from: 'paints',
    called: 'colour, color, Farbe, peinture, couleur, pintura, colore, verf, kleur, farba, kolor',
    example: 'brick red',
  }),
  instead: needed('instead', nameKind, {
    says: 'The paint that is used instead.',
    from: 'paints',
    called: 'use instead, stattdessen, à la place, en su lugar, invece, in plaats daarvan, zamiast',
    example: 'rust red',
  }),
  unit: free('unit', nameKind, {
    says: 'The unit for which this holds.',
    blank: { means: 'every unit' },
    from: 'army',
    called:
      'squad, regiment, Einheit, Trupp, unité, régiment, unidad, regimiento, unità, reparto, eenheid, oddział, jednostka',
    example: 'first spears',
  }),
};
