// Tests: what shops sell, schemes, logs and extras as painters keep them: a shop, a set, a scheme or a unit written once
// above its rows, merged or blank below; layers and zones in three languages; several zones in a cell.

const office = (path, language, ways) => ({ path, in: language, by: 'office', ...ways });
const gnumeric = (path, language, ways) => ({ path, in: language, by: 'gnumeric', ...ways });

const angebote = `
Was die Läden haben
Händler | Artikel | Preis | Farbe | Größe (ml) | Stück
Zum Aalkorb | Schleusengrün 17 ml | 3,25 € | Schleusengrün | 17 | 1
| Torfwasser 24 ml | 4,80 € | Torfwasser | 24 | 1
| Uferkasten | 14,50 € | Schleusengrün | 17 | 1
| | | Schleusenziegel | 17 | 1
| | | Torfwasser | 24 | 2
-
Geteerte Leine | Schleusenziegel 17 ml | 2,95 € | Schleusenziegel | 17 | 1
| Kaidose grau | 12,50 € | Kaigrau | 400 | 1`;

const haendler = `
Händler | Versandkosten | Versandfrei ab | Mindestbestellwert
Zum Aalkorb | 4,90 € | 50 € |
Geteerte Leine | 3,50 € | | 10 €`;

const merged = `
What the shops ask this year
shop | offer | price | paint | size ml
The Eel Trap | Sluice green 17 ml | 3.25 | Sluice green | 17
| Peat water wash 24 ml | 4.80 | Peat water wash | 24
| Lock brick 17 ml | 2.95 | Lock brick | 17
The Tarred Knot | Sluice green 17 ml | 3.10 | Sluice green | 17
| Towpath primer 400 ml | 12.50 | Towpath primer | 400`;

const offerte = `
Negozio | Articolo | Prezzo (€) | Colore | ml | Disponibili
La Nassa | Verde chiusa 17 ml | 3,25 | Verde chiusa | 17 | 4
La Nassa | Lavaggio di torba | 4,80 | Lavaggio di torba | 24 |
Il Nodo | Verde chiusa | 3,10 | Verde chiusa | 17 | 2`;

const winkels = `
Winkel | Verzendkosten | Gratis vanaf | Minimale bestelling
De Aalfuik | 4,90 | 50 |
De Teerknoop | 3,50 | | 10`;

const schemes = `
Scheme | Step | Where | Layer | Paint | Coats
Keeper | 1 | all | undercoat | Towpath primer |
| 2 | tunic, trousers | basecoat | Sluice green | 2
| 3 | boots | base coat | Holt brown |
| 4 | skin | base coat | Bargee's cheek |
| 5 | all | shade | Peat water wash |
| 6 | tunic | highlight | Weir foam |
| 7 | all | varnish | Drizzle dull varnish |
-
Archer | 1 | all | undercoat | Towpath primer |
| 2 | tunic | basecoat | Night ferry blue |
| 3 | bow, belt | basecoat | Holt brown |
| 4 | all | wash | Peat water wash |
| 5 | base top | dry brush | Reed straw |`;

const schemata = `
Schema | Schritt | Bereich | Schicht | Farbe | Aufträge
Wehrwache | 1 | alles | Grundierung | Kaigrau |
| 2 | Hose | Grundfarbe | Schleusengrün | 2
| 3 | Gesicht | Grundfarbe | Schifferwange |
| 4 | alles | Waschung | Torfwasser |
| 5 | Stiefel | Trockenbürsten | Schilfstroh |
| 6 | Hose | Akzent | Wehrschaum |
| 7 | alles | Schutzlack | Nieselmattlack |`;

const schemas = `
Schéma | Étape | Zone | Couche | Peinture
Éclusier | 1 | tout | sous-couche | Gris du quai
Éclusier | 2 | pantalon | couche de base | Vert écluse
Éclusier | 3 | visage | couche de base | Joue de marinier
Éclusier | 4 | tout | lavis | Lavis de tourbe
Éclusier | 5 | bottes | brossage à sec | Paille de roseau
Éclusier | 6 | pantalon | éclaircissement | Écume du barrage
Éclusier | 7 | tout | vernis | Vernis mat bruine`;

const log = `
Date | Unit | Paint | Step | Figures | Before (g) | After (g)
14/3/2026 | First keepers | Sluice green | 2 | 10 | 31.2 | 30.1
15/3/2026 | | Holt brown | 3 | 10 | 22.4 | 22.0
21/3/2026 | | Peat water wash | 5 | 10 | 40.5 | 37.9
22/3/2026 | Lamp archers | Night ferry blue | 2 | 5 | 28.0 | 27.4
22/3/2026 | | Holt brown | 3 | 5 | 22.0 | 21.8`;

const logboek = `
Datum | Verf | Eenheid | Stap | Aantal | Verbruikt (ml)
14-3-2026 | Sluisgroen | Eerste wacht | 2 | 10 | 1,2
21-3-2026 | Veenwater | Eerste wacht | 5 | 10 | 2,6
28-3-2026 | Sluisgroen | Lampschutters | 2 | 5 | 0,6`;

const consommables = `
Article | Prix | Suffit pour
Herbe statique | 6,50 € | 200 figurines
Pinceau fin | 8,90 € | 150
Sable de rivière | 2,50 € | 400`;

export const offersAndLogs = [
  office('de-offers.xlsx', 'de', {
    sheets: { Angebote: angebote, Händler: haendler },
    merges: { Angebote: ['A1:F1'] },
    formats: {
      Angebote: { 'C3:C10': '0,00 [$€-407]' },
      Händler: { 'B2:D3': '0,00 [$€-407]' },
    },
  }),
  office('en-merged-offers.ods', 'en', {
    sheets: { offers: merged },
    merges: { offers: ['A1:E1', 'A3:A5', 'A6:A7'] },
  }),
  office('en-merged-offers.xlsx', 'en', {
    sheets: { offers: merged },
    merges: { offers: ['A1:E1', 'A3:A5', 'A6:A7'] },
  }),
  gnumeric('it-offers.xlsx', 'it', { sheets: { Offerte: offerte } }),
  gnumeric('nl-shops/winkels.csv', 'nl', { sheets: { winkels }, separator: ';' }),
  gnumeric('en-schemes.xlsx', 'en', { sheets: { Schemes: schemes } }),
  office('de-schemes/schemes.csv', 'de', { sheets: { Schemata: schemata }, separator: ';' }),
  gnumeric('fr-schemes.ods', 'fr', { sheets: { Schémas: schemas } }),
  office('en-log.xlsx', 'en', { sheets: { log } }),
  gnumeric('nl-log/logboek.csv', 'nl', { sheets: { logboek }, separator: ';' }),
  office('fr-extras/extras.csv', 'fr', {
    sheets: { extras: consommables },
    separator: ';',
    formats: { extras: { 'B2:B4': '0,00 [$€-40C]' } },
  }),
];
