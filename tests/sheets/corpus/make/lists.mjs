// Tests: one painter's list of pots in each of seven languages, kept as a workbook, as a text and by two programs: a title
// over all columns, a blank row, headers in that language, readings in words, a sum and a note.

const en = `
My paints, spring count
-
Colour | Range | ml | How full | Paid | Notes
Sluice green | Towpath | 17 | half | £3.25 |
Lock brick | Towpath | 17 | ~40% | £3.25 | separates
Weir foam | Towpath | 17 | about a third | £2.95 |
Coal wharf black | Towpath | 17 | almost empty | £2.95 | buy again
Peat water wash | Bilge | 24 | new | £4.80 |
Tallow bone | Bilge | 12 | unopened | £2.40 |
Millrace iron | Bilge | 12 | full | £2.60 |
Silt paste | Bilge | 100 | nearly full | £7.20 | gritty
Drizzle dull varnish | | 400 | 55% | £13.90 |
-
Total | | 611 | | =SUM(E4:E12) |
~ means judged against the light`;

const de = `
Meine Farben, Stand Frühjahr
-
Farbe | Reihe | Inhalt (ml) | Füllstand | Preis | Notiz
Schleusengrün | Treidelpfad | 17 | halb voll | 3,25 € |
Schleusenziegel | Treidelpfad | 17 | ca. 40 % | 3,25 € | setzt sich ab
Wehrschaum | Treidelpfad | 17 | etwa ein Drittel | 2,95 € |
Kohlekaischwarz | Treidelpfad | 17 | fast leer | 2,95 € | nachkaufen
Torfwasser | Bilge | 24 | neu | 4,80 € |
Talgknochen | Bilge | 12 | ungeöffnet | 2,40 € |
Mühlgrabeneisen | Bilge | 12 | voll | 2,60 € |
Schlickpaste | Bilge | 100 | fast voll | 7,20 € | körnig
Nieselmattlack | | 400 | 55 % | 13,90 € |
-
Summe | | 611 | | =SUM(E4:E12) |
ca. = gegen das Licht geschätzt`;

const fr = `
Mes peintures, relevé du printemps
-
Couleur | Gamme | Contenance (ml) | Reste | Prix | Remarques
Vert écluse | Halage | 17 | à moitié | 3,25 € |
Brique d'écluse | Halage | 17 | environ 40 % | 3,25 € | se sépare
Écume du barrage | Halage | 17 | un tiers environ | 2,95 € |
Noir du quai | Halage | 17 | presque vide | 2,95 € | à racheter
Lavis de tourbe | Cale | 24 | neuf | 4,80 € |
Os de suif | Cale | 12 | jamais ouvert | 2,40 € |
Fer du moulin | Cale | 12 | plein | 2,60 € |
Pâte de vase | Cale | 100 | presque plein | 7,20 € | granuleuse
Vernis mat bruine | | 400 | 55 % | 13,90 € |
-
Total | | 611 | | =SUM(E4:E12) |
environ : à l'œil, contre la lumière`;

const es = `
Mis pinturas, recuento de primavera
-
Pintura | Gama | Volumen (ml) | Queda | Precio | Notas
Verde esclusa | Sirga | 17 | la mitad | 3,25 € |
Ladrillo de esclusa | Sirga | 17 | aprox. 40 % | 3,25 € | se separa
Espuma de presa | Sirga | 17 | cerca de un tercio | 2,95 € |
Negro del muelle | Sirga | 17 | casi vacío | 2,95 € | volver a comprar
Lavado de turba | Sentina | 24 | nuevo | 4,80 € |
Hueso de sebo | Sentina | 12 | sin abrir | 2,40 € |
Hierro del molino | Sentina | 12 | lleno | 2,60 € |
Pasta de limo | Sentina | 100 | casi lleno | 7,20 € | con arena
Barniz mate llovizna | | 400 | 55 % | 13,90 € |
-
Total | | 611 | | =SUM(E4:E12) |
aprox. = a ojo, contra la luz`;

const it = `
I miei colori, conteggio di primavera
-
Colore | Linea | Contenuto (ml) | Rimasto | Prezzo | Note
Verde chiusa | Alzaia | 17 | metà | 3,25 € |
Mattone di chiusa | Alzaia | 17 | circa 40% | 3,25 € | si separa
Schiuma di diga | Alzaia | 17 | circa un terzo | 2,95 € |
Nero del molo | Alzaia | 17 | quasi vuoto | 2,95 € | da ricomprare
Lavaggio di torba | Sentina | 24 | nuovo | 4,80 € |
Osso di sego | Sentina | 12 | mai aperto | 2,40 € |
Ferro del mulino | Sentina | 12 | pieno | 2,60 € |
Pasta di limo | Sentina | 100 | quasi pieno | 7,20 € | granulosa
Opaco pioggerella | | 400 | 55% | 13,90 € |
-
Totale | | 611 | | =SUM(E4:E12) |
circa = a occhio, controluce`;

const nl = `
Mijn verf, telling voorjaar
-
Verf | Lijn | Inhoud (ml) | Over | Betaald | Opmerking
Sluisgroen | Jaagpad | 17 | half | € 3,25 |
Sluissteen | Jaagpad | 17 | ongeveer 40% | € 3,25 | scheidt
Stuwschuim | Jaagpad | 17 | ongeveer een derde | € 2,95 |
Kolenkadezwart | Jaagpad | 17 | bijna leeg | € 2,95 | bijkopen
Veenwater | Bilge | 24 | nieuw | € 4,80 |
Talgbeen | Bilge | 12 | ongeopend | € 2,40 |
Molenbeekijzer | Bilge | 12 | vol | € 2,60 |
Slibpasta | Bilge | 100 | bijna vol | € 7,20 | korrelig
Motregen matte vernis | | 400 | 55% | € 13,90 |
-
Totaal | | 611 | | =SUM(E4:E12) |
ongeveer = tegen het licht geschat`;

const pl = `
Moje farby, stan na wiosnę
-
Farba | Seria | Pojemność (ml) | Zostało | Cena | Uwagi
Zieleń śluzy | Hol | 17 | połowa | 13,50 zł |
Cegła śluzy | Hol | 17 | ok. 40% | 13,50 zł | rozwarstwia się
Piana jazu | Hol | 17 | około jednej trzeciej | 12,90 zł |
Czerń nabrzeża | Hol | 17 | prawie pusta | 12,90 zł | dokupić
Torfowa woda | Zęza | 24 | nowa | 19,80 zł |
Łojowa kość | Zęza | 12 | nieotwarta | 10,40 zł |
Żelazo młynówki | Zęza | 12 | pełna | 11,60 zł |
Pasta mułowa | Zęza | 100 | prawie pełna | 31,20 zł | ziarnista
Lakier matowy mżawka | | 400 | 55% | 59,90 zł |
-
Razem | | 611 | | =SUM(E4:E12) |
ok. = na oko, pod światło`;

/** How an office shows prices once a painter has given the column its currency. */
const money = {
  en: '[$£-809]0.00',
  de: '0,00 [$€-407]',
  fr: '0,00 [$€-40C]',
  es: '0,00 [$€-C0A]',
  it: '0,00 [$€-410]',
  nl: '[$€-413] 0,00',
  pl: '0,00 [$zł-415]',
};

const list = (language, name, typed) => ({
  in: language,
  sheets: { [name]: typed },
  merges: { [name]: ['A1:F1'] },
  formats: { [name]: { 'E4:E14': money[language] } },
});

/** The two programs take turns, so that each writes both kinds. */
const books = (language, name, typed) => {
  const isTurned = ['de', 'es', 'nl'].includes(language);
  const shared = list(language, name, typed);
  return [
    { ...shared, path: `${language}-list.xlsx`, by: isTurned ? 'gnumeric' : 'office' },
    { ...shared, path: `${language}-list.ods`, by: isTurned ? 'office' : 'gnumeric' },
  ];
};

const text = (language, [file, typed], ways) => ({
  ...list(language, 'list', typed),
  path: `${language}-list/${file}`,
  by: 'office',
  ...ways,
});

export const lists = [
  ...books('en', 'My paints', en),
  ...books('de', 'Farben', de),
  ...books('fr', 'Peintures', fr),
  ...books('es', 'Pinturas', es),
  ...books('it', 'Colori', it),
  ...books('nl', 'Verf', nl),
  ...books('pl', 'Farby', pl),
  text('en', ['My paints.csv', en], {}),
  text('de', ['Farben.csv', de], { separator: ';', charset: 'windows-1252' }),
  text('fr', ['Mes peintures.txt', fr], { separator: '\t', charset: 'utf-16' }),
  text('es', ['pinturas.csv', es], { separator: ';', charset: 'ISO-8859-1', by: 'gnumeric' }),
  text('it', ['colori.csv', it], { separator: ';', by: 'gnumeric' }),
  text('nl', ['verf.tsv', nl], { separator: '\t', charset: 'windows-1252' }),
  text('pl', ['farby.csv', pl], { separator: ';' }),
  text('pl', ['farby.csv', pl], { path: 'pl-list-1250/farby.csv', separator: ';', charset: 'windows-1250' }),
];
