// Tests: pots in words as painters type them into cells that are formatted as text: halves and quarters, several pots in a
// row, sizes with their units, a can, a gift, in seven languages.

const cells = `
paint | size ml | left | price | container
Sluice green | 17ml | half | 3.25 € | dropper
Lock brick | 17 ml | 1/2 | €3.25 | dropper
Weir foam | 17 | ½ | 3,25 € | dropper
Kiln brick | 0.4 l | 3/4 | 13.90 € | spray
Hawser tan | 0,4 l | ~40% | 13,90 € | spray
Holt brown | 17 | about a third | 2.95 € | pot
Reed straw | 17 | almost empty | 2.95 € | pot
Sedge green | 12 | new | 2.40 € | pot
Tallow bone | 12 | unopened | gift | pot
Duckweed green | 17 | 2x | 2.95 € | dropper
Millrace iron | 17 | 2 full, 1 half | 3.25 € | dropper
Coal wharf black | 2x 17ml | | 2.95 € | dropper
Silt paste | 100 ml | three quarters | 7.20 € | tube
Peat water wash | 24ml | a quarter | 4.80 € | pot
Pond frog green | 12 ml | empty | 2.40 € | pot`;

const words = {
  de: `
Farbe | Größe | Rest | Bezahlt | Behälter
Kaigrau | 0,4 l | ¾ | 12,50 € | Spraydose
Schleusengrün | 17ml | 1/2 | geschenkt | Tropfflasche
Wehrschaum | 17 ml | 2 volle, 1 halbe | 2,95 € | Topf
Talgknochen | 2x 12 ml | | 2,40 € | Topf
Schlickpaste | 100 ml | drei Viertel | 7,20 € | Tube
Torfwasser | 24 ml | leer | 4,80 € | Topf`,
  fr: `
Peinture | Taille | Reste | Payé | Contenant
Gris du quai | 0,4 l | ¾ | 12,50 € | bombe
Vert écluse | 17ml | 1/2 | offert | compte-gouttes
Écume du barrage | 17 ml | 2 pleins, 1 à moitié | 2,95 € | pot
Os de suif | 2x 12 ml | | 2,40 € | pot
Pâte de vase | 100 ml | trois quarts | 7,20 € | tube
Lavis de tourbe | 24 ml | vide | 4,80 € | pot`,
  es: `
Pintura | Tamaño | Resto | Pagado | Envase
Gris del muelle | 0,4 l | ¾ | 12,50 € | aerosol
Verde esclusa | 17ml | 1/2 | regalo | cuentagotas
Espuma de presa | 17 ml | 2 llenos, 1 a la mitad | 2,95 € | bote
Hueso de sebo | 2x 12 ml | | 2,40 € | bote
Pasta de limo | 100 ml | tres cuartos | 7,20 € | tubo
Lavado de turba | 24 ml | vacío | 4,80 € | bote`,
  it: `
Colore | Formato | Resto | Pagato | Contenitore
Grigio del molo | 0,4 l | ¾ | 12,50 € | bomboletta
Verde chiusa | 17ml | 1/2 | regalo | contagocce
Schiuma di diga | 17 ml | 2 pieni, 1 a metà | 2,95 € | vasetto
Osso di sego | 2x 12 ml | | 2,40 € | vasetto
Pasta di limo | 100 ml | tre quarti | 7,20 € | tubetto
Lavaggio di torba | 24 ml | vuoto | 4,80 € | vasetto`,
  nl: `
Verf | Maat | Rest | Betaald | Verpakking
Kadegrijs | 0,4 l | ¾ | € 12,50 | spuitbus
Sluisgroen | 17ml | 1/2 | cadeau | druppelflesje
Stuwschuim | 17 ml | 2 vol, 1 half | € 2,95 | potje
Talgbeen | 2x 12 ml | | € 2,40 | potje
Slibpasta | 100 ml | driekwart | € 7,20 | tube
Veenwater | 24 ml | leeg | € 4,80 | potje`,
  pl: `
Farba | Rozmiar | Reszta | Zapłacono | Pojemnik
Szarość nabrzeża | 0,4 l | ¾ | 59,90 zł | spray
Zieleń śluzy | 17ml | 1/2 | prezent | zakraplacz
Piana jazu | 17 ml | 2 pełne, 1 do połowy | 12,90 zł | słoik
Łojowa kość | 2x 12 ml | | 10,40 zł | słoik
Pasta mułowa | 100 ml | trzy czwarte | 31,20 zł | tubka
Torfowa woda | 24 ml | pusta | 19,80 zł | słoik`,
};

const inWords = (language, path, name) => ({
  path,
  in: language,
  by: 'office',
  sheets: { [name]: language === 'en' ? cells : words[language] },
  asText: true,
  separator: language === 'en' ? ',' : ';',
});

export const potsInWords = [
  inWords('en', 'en-words/pots.csv', 'pots'),
  inWords('de', 'de-words.xlsx', 'Farben'),
  inWords('fr', 'fr-words.ods', 'Peintures'),
  inWords('es', 'es-words/pinturas.csv', 'pinturas'),
  inWords('it', 'it-words.xlsx', 'Colori'),
  inWords('nl', 'nl-words.ods', 'Verf'),
  inWords('pl', 'pl-words/farby.csv', 'farby'),
];
