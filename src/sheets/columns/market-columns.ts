// Columns: what money buys. In: nothing. Out: the columns of offers, shops and extras.
import { availableCount, potCount } from '../check/read-cell/read-count.js';
import { nameKind } from '../check/read-cell/read-name.js';
import { potVolume, servedFigures } from '../check/read-cell/read-number.js';
import { free, money, needed } from './column.js';
import { ofPot } from './shelf-columns.js';

export const offers = {
  shop: needed('shop', nameKind, {
    fillsDown: 'always',
    says: 'Who sells it.',
    from: 'shops',
    called:
      'store, seller, dealer, Händler, Laden, Geschäft, boutique, magasin, vendeur, tienda, vendedor, negozio, venditore, winkel, verkoper, sklep, sprzedawca',
    example: 'The Eel Trap',
  }),
  offer: needed('offer', nameKind, {
    fillsDown: 'always',
    says: 'What the shop calls it. Rows with the same shop and offer are one set.',
    called:
      'item, article, product, Artikel, Angebot, Produkt, offre, produit, artículo, oferta, producto, articolo, offerta, prodotto, aanbieding, artykuł',
    example: 'brick red 17 ml',
  }),
  price: needed('price', money, {
    isShared: true,
    isIn: 'money',
    says: 'Price of the whole offer; in a set it stands on one row.',
    called: 'cost, Preis, prix, precio, prezzo, prijs, cena',
    example: '3.50',
  }),
  paint: needed('paint', nameKind, {
    unless: 'range',
    says: 'Name of the paint in it.',
    from: 'paints',
    called: 'colour, color, Farbe, peinture, couleur, pintura, colore, verf, kleur, farba, kolor',
    example: 'brick red',
  }),
  range: free('range', nameKind, {
    says: 'Instead of a paint: each paint of that range is an offer of its own in this size, called as the offer, a comma and the paint.',
    blank: { means: 'the paint alone' },
    from: 'paints',
    called:
      'series, line, paint range, Reihe, Serie, Farbreihe, gamme, série, gama, serie, línea, gamma, linea, lijn, seria',
    example: 'Depot line',
  }),
  sizeMl: needed('size ml', potVolume, {
    says: 'Volume of one pot, in millilitres.',
    called:
      'volume, content, contents, pot size, bottle size, ml, Inhalt, Größe, Füllmenge, Volumen, contenance, contenu, taille, contenido, tamaño, contenuto, formato, inhoud, maat, pojemność, objętość, rozmiar',
    example: '17',
  }),
  pots: free('pots', potCount, {
    says: 'How many such pots the offer holds.',
    blank: { means: '1', value: 1, isCounted: true },
    called:
      'pieces, qty, quantity, Stück, Anzahl, quantité, pièces, cantidad, piezas, quantità, pezzi, aantal, stuks, sztuk, ilość',
    example: '1',
  }),
  available: free('available', availableCount, {
    says: 'How many of the offer can be had.',
    blank: { means: 'no limit' },
    called:
      'in stock, verfügbar, auf Lager, disponible, disponibles, en stock, disponibile, disponibili, beschikbaar, op voorraad, dostępne',
    example: '4',
  }),
  ...ofPot,
};

const sum = { isIn: 'money' } as const;

export const shops = {
  shop: needed('shop', nameKind, {
    says: 'Name as in the offers sheet.',
    called:
      'store, seller, dealer, name, Händler, Laden, Geschäft, boutique, magasin, vendeur, tienda, vendedor, negozio, venditore, winkel, verkoper, sklep, sprzedawca',
    example: 'The Eel Trap',
  }),
  postage: free('postage', money, {
    ...sum,
    says: 'What one delivery costs.',
    blank: { means: '0', value: 0, isCounted: true },
    called:
      'shipping, delivery, P&P, postage and packing, Versand, Versandkosten, Porto, port, frais de port, livraison, envío, gastos de envío, spedizione, spese di spedizione, verzending, verzendkosten, wysyłka, koszt wysyłki',
    example: '4.90',
  }),
  freeFrom: free('free from', money, {
    ...sum,
    says: 'Goods of this sum or more travel free.',
    blank: { means: 'postage is always paid', isCounted: true },
    called:
      'free shipping from, free delivery from, versandfrei ab, franco de port dès, port offert dès, envío gratis desde, gratis desde, spedizione gratis da, gratis da, gratis vanaf, darmowa wysyłka od',
    example: '50',
  }),
  leastOrder: free('least order', money, {
    ...sum,
    says: 'The shop takes no order below this sum.',
    blank: { means: 'any sum', isCounted: true },
    called:
      'minimum order, Mindestbestellwert, Mindestbestellung, commande minimum, pedido mínimo, ordine minimo, minimale bestelling, minimumbestelling, minimalne zamówienie',
    example: '10',
  }),
};

export const extras = {
  item: needed('item', nameKind, {
    says: 'A brush, flock, sand, thinner ...',
    called: 'article, name, Artikel, artículo, articolo, artykuł',
    example: 'static grass',
  }),
  price: needed('price', money, {
    ...sum,
    says: 'What it costs.',
    called: 'cost, Preis, prix, precio, prezzo, prijs, cena',
    example: '6.50',
  }),
  serves: needed('serves', servedFigures, {
    says: 'How many figures one of it serves.',
    called:
      'enough for, lasts for, reicht für, suffit pour, alcanza para, basta per, genoeg voor, wystarcza na',
    example: '200',
  }),
};
