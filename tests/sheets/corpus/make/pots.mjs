// Tests: pots as painters keep them beside the lists in seven languages: pots counted in a column, days and
// currencies as formats, weights, fractions, one shelf in two files, headers that could be two things.

const office = (path, language, ways) => ({ path, in: language, by: 'office', ...ways });
const gnumeric = (path, language, ways) => ({ path, in: language, by: 'gnumeric', ...ways });

const counted = `
Name | Type | Size | Qty | Opened | Shelf
Sedge green | | 17ml | 1 | 14/3/2026 | rack 2
Peat water | wash | 24ml | 2 | 2/11/2025 | bench
Millrace iron | metallic | 17ml | 1 | 19/1/2025 | rack 3
Silt | texture | 100ml | 1 | 22/3/2025 | drawer
Towpath | primer | 400ml | 1 | | attic
Weir foam | | 17ml | 3 | | rack 2`;

const dollars = `
Paint | Volume (ml) | Fill % | Cost | Date opened
Sluice green | 17 | 60 | $3.25 | 3/14/2026
Lock brick | 17 | 40 | $3.25 | 3/4/2026
Weir foam | 17 | 100 | $2.95 | 11/30/2025
Peat water wash | 24 | 25 | $4.80 | 12/1/2025
Silt paste | 100 | 0 | $7.20 | 10/31/2025`;

const boxOne = `
Name | ml | Rest | Bezahlt
Schleusengrün | 17 | 60 % | 2,95
Schleusenziegel | 17 | 15 % | 2,95
Torfwasser | 24 | halb | 4,80`;

const boxTwo = `
Name | ml | Rest | Bezahlt
Talgknochen | 12 | voll | 2,40
Wehrschaum | 17 | leer | 2,95
Schleusengrün | 17 | 9,5 ml | 2,95`;

const attic = `
paint | size ml | left | price
Towpath primer | 400 | 55% | 12.50
Drizzle dull varnish | 400 | full | 13.90`;

const desk = `
paint | size ml | left | price
Sluice green | 17 | 40% | 2.95
Night ferry blue | 17 | full | 2.95
Lock brick | 17 | 15% | 2.95`;

const weighed = `
Verf | Inhoud ml | Gewicht (g) | Leeg (g) | Geopend
Sluisgroen | 17 | 22,4 | 8,9 | 2-9-2025
Sluissteen | 17 | 12,6 | 8,9 | 20-11-2025
Veenwater | 24 | 31,2 | 14,5 | 14-2-2026
Talgbeen | 12 | 19 | 7,5 | `;

const fractions = `
Nom | Contenance | Niveau | Prix (€)
Vert écluse | 17 ml | ½ | 2,95
Brique d'écluse | 17 ml | ¼ | 2,95
Écume du barrage | 17 ml | ¾ | 2,95
Noir du quai | 17 ml | un tiers | 2,95
Os de suif | 12 ml | deux tiers | 2,40
Fer du moulin | 12 ml | la moitié | 2,60
Lavis de tourbe | 24 ml | 8,5 ml | 4,80
Pâte de vase | 100 ml | plein | 7,20
Vernis mat bruine | 0,4 l | vide | 13,90`;

const dateTrap = `
paint | size ml | left
Sluice green | 17 | 1/2
Lock brick | 17 | 3/4
Weir foam | 17 | 60%
Holt brown | 17 | 1/3`;

const kinds = `
Pintura | Tipo | Hex | Contenido en ml | Cantidad restante | Coste
Verde esclusa | color | #3a5f2b | 17 | 60% | 2,95
Lavado de turba | lavado | #4a3a22 | 24 | 6 ml | 4,80
Hierro del molino | metálico | #8a8d90 | 17 | la mitad | 3,25
Niebla de presa | imprimación | #7d7f80 | 400 | 55% | 12,50
Mate llovizna | barniz | | 400 | lleno | 13,90
Pasta de limo | textura | #5b4a35 | 100 | 45 ml | 7,20`;

const wishes = `
Paint | ml | Owned | Shop price
Sluice green | 17 | yes | £2.95
Night ferry blue | 17 | no | £2.95
Lock brick | 17 | yes | £2.95
Old pennant purple | 17 | no | £2.95`;

const amounts = `
Paint | Size (ml) | Amount | Price
Sluice green | 17 | 60 | 2.95
Lock brick | 17 | 15 | 2.95
Peat water wash | 24 | 12 | 4.80`;

const bareRest = `
Farbe | Größe ml | Rest | Gekostet
Schleusengrün | 17 | 60 | 2,95
Schleusenziegel | 17 | 8 | 2,95
Torfwasser | 24 | 12 | 4,80`;

const twoNames = `
Name | Colour | Size | Left
Sluice | green | 17 ml | 40%
Lock brick | red | 17 ml | 15%
Night ferry | blue | 17 ml | full`;

const pounds = `
paint | size ml | left | price
Sluice green | 17 | 40% | 2.95
Lock brick | 17 | 15% | 2.95
Peat water wash | 24 | 25% | 4.80`;

const summed = `
paint | size ml | left | price
Sluice green | 17 | 40% | 2.95
Lock brick | 17 | 15% | 2.95
Subtotal rack | 34 | | 5.90
Peat water wash | 24 | 25% | 4.80
Silt paste | 100 | 45 ml | 7.20
Subtotal drawer | 124 | | 12.00
Total | =B2+B3+B5+B6 | | =D2+D3+D5+D6
Average per pot | | | 4.48`;

const formatted = `
paint | size ml | left | empty g | price
Sluice green | 17 | 40 | | 2.95
Lock brick | 17 | 9.5 | | 2.95
Peat water wash | 24 | 31.2 | 14.5 | 4.80
Towpath primer | 0.4 | 55 | | 12.50`;

const noted = `
Hobby shelf, counted on the first Sunday of spring
Rack by the window
-
-
Colour name | Volume | Remaining | What I paid
Sluice green | 17 ml | 40% | 2.95
Lock brick | 17 ml | 15% | 2.95
-
Drawer
Peat water wash | 24 ml | 25% | 4.80
Silt paste | 100 ml | 45 ml | 7.20
-
Sum | | | 17.90
Average | | | 4.48
Ask the ferryman for his old varnish
Prices without postage`;

export const pots = [
  gnumeric('en-counted.xlsx', 'en', { sheets: { pots: counted } }),
  office('us-dollars/pots.csv', 'us', { sheets: { pots: dollars } }),
  office('de-two-boxes/Kiste 1.csv', 'de', { sheets: { Kiste: boxOne }, separator: ';' }),
  gnumeric('de-two-boxes/Kiste 2.csv', 'de', { sheets: { Kiste: boxTwo }, separator: ';' }),
  office('en-two-boxes/pots attic.csv', 'en', { sheets: { pots: attic } }),
  office('en-two-boxes/pots desk.csv', 'en', { sheets: { pots: desk } }),
  office('en-two-boxes.xlsx', 'en', { sheets: { 'Pots attic': attic, 'Pots desk': desk } }),
  office('nl-weighed.ods', 'nl', { sheets: { pots: weighed } }),
  gnumeric('fr-fractions.xlsx', 'fr', { sheets: { Pots: fractions } }),
  gnumeric('en-date-trap.xlsx', 'en', { sheets: { pots: dateTrap } }),
  office('en-date-trap/pots.csv', 'en', { sheets: { pots: dateTrap } }),
  gnumeric('es-kinds/pots.csv', 'es', { sheets: { pots: kinds }, separator: ';' }),
  office('en-wishes.xlsx', 'en', { sheets: { Pots: wishes } }),
  office('en-amounts/pots.csv', 'en', { sheets: { pots: amounts } }),
  office('de-bare-rest.ods', 'de', { sheets: { Farben: bareRest } }),
  office('en-two-names.xlsx', 'en', { sheets: { pots: twoNames } }),
  office('en-pounds.xlsx', 'en', {
    sheets: { pots: pounds },
    formats: { pots: { 'D2:D4': '[$£-809]0.00' } },
  }),
  office('en-two-currencies.xlsx', 'en', {
    sheets: { pots: pounds },
    formats: { pots: { 'D2:D3': '[$£-809]0.00', 'D4:D4': '[$€-2] 0.00' } },
  }),
  office('en-summed.xlsx', 'en', { sheets: { pots: summed } }),
  office('en-summed/pots.csv', 'en', { sheets: { pots: summed } }),
  office('en-formatted.xlsx', 'en', {
    sheets: { pots: formatted },
    formats: {
      pots: {
        'B2:B4': '0" ml"',
        'B5:B5': '0.0" l"',
        'C2:C2': '0"%"',
        'C3:C3': '0.0" ml"',
        'C4:D4': '0.0" g"',
        'C5:C5': '0"%"',
      },
    },
  }),
  office('en-noted.ods', 'en', { sheets: { pots: noted }, merges: { pots: ['A1:D1', 'A2:D2'] } }),
];
