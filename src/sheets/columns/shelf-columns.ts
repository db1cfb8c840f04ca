// Columns: what stands on the shelf. In: nothing. Out: the columns of pots and paints.
import { containers, opacities, paintKinds } from '../../model/words.js';
import { canFromMl } from '../check/pick-container.js';
import { choiceKind, yesKind } from '../check/read-cell/read-choice.js';
import { codeKind } from '../check/read-cell/read-code.js';
import { ownedCount } from '../check/read-cell/read-count.js';
import { dateKind } from '../check/read-cell/read-date.js';
import { hexKind } from '../check/read-cell/read-hex.js';
import { listKind, nameKind } from '../check/read-cell/read-name.js';
import { density, emptyWeight, keptVolume, thinning } from '../check/read-cell/read-number.js';
import { paidKind } from '../check/read-cell/read-price.js';
import { leftsKind, shelfVolume } from '../check/read-cell/read-several.js';
import { containerWords, kindWords, opacityWords } from './choice-words.js';
import { free, needed } from './column.js';

/** What describes a paint; the pots sheet takes these columns too. */
const ofPaint = {
  kind: free('kind', choiceKind('a kind of paint', paintKinds, kindWords), {
    says: 'What sort of paint.',
    blank: { means: 'colour' },
    called: 'type, sort, Art, Typ, Sorte, genre, tipo, clase, soort, rodzaj',
    example: 'wash',
  }),
  hex: free('hex', hexKind, {
    says: 'The colour as six hex digits.',
    blank: { means: 'not known' },
    isDigits: true,
    called: 'hex code, hex colour, hex color, Hexcode',
    example: '#8a2b2b',
  }),
  opacity: free('opacity', choiceKind('an opacity', opacities, opacityWords), {
    says: 'How well one coat hides what is under it.',
    blank: { means: 'not known' },
    called: 'coverage, covering power, Deckkraft, opacité, opacidad, opacità, dekking, dekkracht, krycie',
    example: 'fair',
  }),
  density: free('density g/ml', density, {
    says: 'Weight of one millilitre.',
    blank: { means: 'as usual for its kind' },
    called: 'Dichte, densité, densidad, densità, dichtheid, gęstość',
    example: '1.2',
  }),
  thin: free('thin', thinning, {
    says: 'Parts of water to one part of paint.',
    blank: { means: 'as usual for the layer' },
    called: 'thinning, dilution, Verdünnung, dilución, diluizione, verdunning, rozcieńczenie',
    example: '0.5',
  }),
  keepMl: free('keep ml', keptVolume, {
    says: 'What should always be left on the shelf.',
    blank: { means: 'a share of its largest pot, the assumption shelf level' },
    called:
      'Mindestbestand, stock minimum, existencia mínima, scorta minima, minimumvoorraad, minimalny zapas',
    example: '3',
  }),
  range: free('range', nameKind, {
    says: 'What its maker calls the series; an offer may price all of it.',
    blank: { means: 'none' },
    called:
      'series, line, paint range, Reihe, Serie, Farbreihe, gamme, série, gama, serie, línea, gamma, linea, lijn, seria',
    example: 'Depot line',
  }),
  alsoCalled: free('also called', listKind, {
    says: 'Other names of this paint, parted by commas.',
    blank: { means: 'none' },
    isDigits: true,
    called: 'aka, also known as, auch genannt, alias',
    example: 'old brick red',
  }),
};

/** What offers hold and shelves hold alike. */
export const ofPot = {
  container: free('container', choiceKind('a container', containers, containerWords), {
    says: 'What holds the paint.',
    blank: { means: `a can for a primer or varnish of ${canFromMl} ml or more, else a pot`, isCounted: true },
    called:
      'packaging, Behälter, Gebinde, contenant, récipient, envase, recipiente, contenitore, verpakking, pojemnik, opakowanie',
    example: 'dropper',
  }),
  code: free('code', codeKind, {
    says: 'The number under the bar code (GTIN).',
    blank: { means: 'none' },
    isDigits: true,
    called:
      'gtin, ean, barcode, Strichcode, code-barres, código de barras, codice a barre, streepjescode, kod kreskowy',
    example: '2000310000217',
  }),
};

export const pots = {
  paint: needed('paint', nameKind, {
    says: 'Name of the paint in the pot.',
    from: 'paints',
    called:
      'colour, color, name, paint name, colour name, color name, Farbe, Farbname, Farbton, peinture, couleur, nom, pintura, colore, nome, verf, kleur, naam, farba, kolor, nazwa',
    example: 'brick red',
  }),
  sizeMl: needed('size ml', shelfVolume, {
    says: 'Volume on the label, in millilitres.',
    called:
      'volume, content, contents, capacity, pot size, bottle size, ml, Inhalt, Flascheninhalt, Topfgröße, Größe, Füllmenge, Volumen, contenance, contenu, taille, contenido, tamaño, contenuto, formato, inhoud, maat, pojemność, objętość, rozmiar',
    example: '17',
  }),
  left: free('left', leftsKind, {
    says: 'What is still in it: 60%, 7.5 ml, full, empty, or a weight such as 31.2 g.',
    blank: { means: 'full', isCounted: true },
    called:
      'how full, remaining, rest, fill, fill level, level, amount left, how much is left?, how much is left, Füllstand, Restmenge, übrig, noch drin, reste, restant, niveau, queda, resto, restante, cantidad restante, nivel, rimasto, rimanente, livello, over, resterend, zostało, pozostało, reszta',
    example: '60%',
  }),
  emptyG: free('empty g', emptyWeight, {
    says: 'Weight of the empty pot in grams; needed where left is a weight.',
    called:
      'empty weight, tare, leer, Leergewicht, vide, poids à vide, vacío, peso vacío, tara, vuoto, peso a vuoto, leeg, leeggewicht, waga pustego',
    example: '14.5',
  }),
  count: free('pots', ownedCount, {
    says: 'How many alike: left, empty g and price are those of each.',
    blank: { means: '1, or as left or size say: 2 full, 1 half; 2x 17 ml' },
    called:
      'count, qty, quantity, how many, number of pots, number of bottles, Anzahl, Stück, Stückzahl, nombre, quantité, qté, cantidad, número, quantità, numero, aantal, stuks, sztuk, liczba, ilość',
    example: '2',
  }),
  price: free('price', ({ price }) => paidKind(price), {
    isIn: 'money',
    says: 'What the whole pot cost; a gift is unpriced.',
    blank: { means: 'unpriced', isCounted: true },
    called:
      'paid, price paid, cost, what I paid, Preis, bezahlt, gekostet, Kaufpreis, prix, payé, coût, precio, pagado, coste, costo, prezzo, pagato, prijs, betaald, cena, zapłacono, koszt',
    example: '3.50',
  }),
  opened: free('opened', dateKind, {
    says: 'Day it was opened.',
    blank: { means: 'not opened yet', isCounted: true },
    called:
      'date opened, opened on, geöffnet, angebrochen, ouvert, ouvert le, abierto, aperto, geopend, otwarto, otwarta',
    example: '2026-01-31',
  }),
  counted: free('counted', dateKind, {
    says: 'Day of the reading in left; log rows after it lower the pot.',
    blank: { means: 'every row of the log lowers it' },
    called: 'counted on, gezählt, compté le, contado, contato, geteld, policzono',
    example: '2026-03-01',
  }),
  container: ofPot.container,
  ordered: free('ordered', yesKind, {
    says: 'yes: on its way, counts as full.',
    blank: { means: 'no, it stands on the shelf', value: false, isCounted: true },
    called: 'on order, bestellt, commandé, pedido, ordinato, besteld, zamówiono',
    example: 'no',
  }),
  code: ofPot.code,
  place: free('place', nameKind, {
    says: 'Where it stands.',
    blank: { means: 'not said' },
    called:
      'shelf, rack, location, Ort, Regal, Fach, emplacement, lugar, sitio, posto, plaats, plek, miejsce, półka',
    example: 'rack 2',
  }),
  ...ofPaint,
};

export const paints = {
  paint: needed('paint', nameKind, {
    says: 'Name of the paint.',
    called:
      'colour, color, name, paint name, colour name, color name, Farbe, Farbname, Farbton, peinture, couleur, nom, pintura, colore, nome, verf, kleur, naam, farba, kolor, nazwa',
    example: 'brick red',
  }),
  ...ofPaint,
};
