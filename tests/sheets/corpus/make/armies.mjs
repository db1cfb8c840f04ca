// Tests: figures and whole armies as painters keep them: several sheets in one workbook, a folder of texts, folders that mix
// workbooks and texts, armies without pots.

const office = (path, language, ways) => ({ path, in: language, by: 'office', ...ways });
const gnumeric = (path, language, ways) => ({ path, in: language, by: 'gnumeric', ...ways });

const models = `
Models waiting | as of spring
-
Model | Eye height | Base | Carries | Price each | Remarks
Lock keeper | 28 mm | 25mm round | weapon, round shield | £1.80 | hats loose
Lamp archer | 28mm | round 25 | bow | £1.80 |
Weir guard | 28 | 25x50 | weapon, large shield | £2.20 |
Post rider | 28 mm | 60x35 oval | weapon, horse | £4.50 | two reins
Bargee | 28 mm | 20 mm square | none | £1.60 |
-
5 models | | | | £11.90 |`;

const de = {
  Farben: `
Farbe | Inhalt ml | Rest | Preis
Kaigrau | 400 | 55 % | 12,50 €
Schleusengrün | 17 | 40 % | 2,95 €
Torfwasser | 24 | halb | 4,80 €
Nieselmattlack | 400 | voll | 13,90 €`,
  Figuren: `
Figur | Augenhöhe (mm) | Base | Stückpreis
Schleusenwärter | 28 | rund 25 | 1,80 €
Postreiter | 28 | oval 60x35 | 4,50 €`,
  Schemata: `
Schema | Schritt | Bereich | Schicht | Farbe
Wärter | 1 | alles | Grundierung | Kaigrau
Wärter | 2 | Hose | Grundfarbe | Schleusengrün
Wärter | 3 | alles | Waschung | Torfwasser
Wärter | 4 | alles | Schutzlack | Nieselmattlack`,
  Armee: `
Einheit | Figur | Schema | Anzahl
Erste Wache | Schleusenwärter | Wärter | 20
Postreiter | Postreiter | Wärter | 5
Summe | | | 25`,
};

const es = {
  pinturas: `
Pintura | ml | Queda | Precio
Gris del muelle | 400 | 55 % | 12,50
Verde esclusa | 17 | 40 % | 2,95
Lavado de turba | 24 | 6 ml | 4,80`,
  figuras: `
Figura | Altura de los ojos (mm) | Peana
Esclusero | 28 | redonda 25
Barquero | 28 | 25x50`,
  esquemas: `
Esquema | Paso | Zona | Capa | Pintura
Esclusero | 1 | todo | imprimación | Gris del muelle
Esclusero | 2 | pantalones | capa base | Verde esclusa
Esclusero | 3 | todo | lavado | Lavado de turba`,
  unidades: `
Unidad | Figura | Esquema | Cantidad
Primera guardia | Esclusero | Esclusero | 20
Barqueros | Barquero | Esclusero | 10`,
};

const pl = {
  Farby: `
Farba | Pojemność ml | Zostało | Cena
Szarość nabrzeża | 400 | 55% | 59,90 zł
Zieleń śluzy | 17 | 40% | 12,90 zł
Torfowa woda | 24 | 6 ml | 19,80 zł`,
  Figurki: `
Figurka | Wysokość oczu (mm) | Podstawka
Śluzowy | 28 | okrągła 25
Przewoźnik | 28 | 25x50`,
  Armia: `
Oddział | Figurka | Liczba
Pierwsza straż | Śluzowy | 20
Przewoźnicy | Przewoźnik | 10
-
Razem | | 30`,
};

const armée = `
Mon armée des écluses
-
Unité | Figurine | Schéma | Nombre | Peintes
Première garde | Éclusier | Éclusier | 20 figurines | 5
Archers à lampe | Archer | Éclusier | 10 figurines | 0
Passeurs | Passeur | Éclusier | 12 | 0
-
Total | | | 42 |
Les passeurs attendent leurs socles`;

const modelli = `
Modello | Altezza occhi | Basetta | Prezzo
Guardiano | 28 mm | tonda 25 mm | 1,80
Traghettatore | 28 mm | 25x50 | 1,60`;

const esercito = `
Unità | Modello | Quantità
Prima guardia | Guardiano | 20
Traghettatori | Traghettatore | 10`;

const leger = `
Eenheid | Figuur | Aantal | Prioriteit
Eerste wacht | Sluiswachter | 20 | 1
Lampschutters | Schutter | 10 | 2`;

const figuren = `
Figuur | Ooghoogte mm | Voetje | Prijs
Sluiswachter | 28 | rond 25 | € 1,80
Schutter | 28 | rond 25 | € 1,80`;

const plain = {
  pots: `
paint | size ml | left | price
Towpath primer | 400 | 55% | 12.50
Sluice green | 17 | 40% | 2.95
Peat water wash | 24 | 25% | 4.80`,
  figures: `
figure | eye mm | base | price
Lock keeper | 28 | round 25 | 1.80
Lamp archer | 28 | round 25 | 1.80`,
  schemes: `
scheme | step | zone | layer | paint
Keeper | 1 | all | primer | Towpath primer
Keeper | 2 | tunic | base coat | Sluice green
Keeper | 3 | all | wash | Peat water wash`,
  army: `
unit | figure | scheme | count
First keepers | Lock keeper | Keeper | 20
Lamp archers | Lamp archer | Keeper | 10`,
  offers: `
shop | offer | price | paint | size ml
The Eel Trap | Sluice green 17 ml | 3.25 | Sluice green | 17
The Eel Trap | Peat water wash 24 ml | 4.80 | Peat water wash | 24`,
};

const pick = (from, ...names) => Object.fromEntries(names.map((name) => [name, from[name]]));

export const armies = [
  office('en-figures.xlsx', 'en', { sheets: { figures: models } }),
  office('de-army.xlsx', 'de', {
    sheets: de,
    formats: { Farben: { 'D2:D5': '0,00 [$€-407]' }, Figuren: { 'D2:D3': '0,00 [$€-407]' } },
  }),
  ...Object.keys(es).map((name) =>
    gnumeric(`es-army/${name}.csv`, 'es', { sheets: pick(es, name), separator: ';' }),
  ),
  office('pl-army.ods', 'pl', { sheets: pl, formats: { Farby: { 'D2:D4': '0,00 [$zł-415]' } } }),
  gnumeric('fr-army.xlsx', 'fr', { sheets: { Armée: armée } }),
  office('it-army/modelli.tsv', 'it', { sheets: { modelli }, separator: '\t' }),
  office('it-army/esercito.tsv', 'it', { sheets: { esercito }, separator: '\t', charset: 'utf-16' }),
  gnumeric('nl-army.xlsx', 'nl', { sheets: { Leger: leger, Figuren: figuren } }),
  office('en-mixed/pots.csv', 'en', { sheets: pick(plain, 'pots') }),
  gnumeric('en-mixed/figures.xlsx', 'en', { sheets: pick(plain, 'figures') }),
  office('en-mixed/schemes.ods', 'en', { sheets: pick(plain, 'schemes') }),
  office('en-mixed/army.csv', 'en', { sheets: pick(plain, 'army'), separator: ';' }),
  office('de-mixed/Farben.ods', 'de', {
    sheets: pick(de, 'Farben'),
    formats: { Farben: { 'D2:D5': '0,00 [$€-407]' } },
  }),
  gnumeric('de-mixed/Figuren.csv', 'de', { sheets: pick(de, 'Figuren'), separator: ';' }),
  gnumeric('de-mixed/Armee.xlsx', 'de', { sheets: pick(de, 'Schemata', 'Armee') }),
  office('en-without-pots/figures.csv', 'en', { sheets: pick(plain, 'figures') }),
  office('en-without-pots/schemes.csv', 'en', { sheets: pick(plain, 'schemes') }),
  office('en-without-pots/army.csv', 'en', { sheets: pick(plain, 'army') }),
  office('en-pots-and-offers.xlsx', 'en', { sheets: pick(plain, 'pots', 'offers') }),
];
