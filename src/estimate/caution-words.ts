// Estimate: words by which painters name what can harm them. In: a name from a sheet. Out: whether it tells of such a thing.
// Words of the trade in seven languages, from memory; no list of products, and never the whole list: what no word here tells
// of, the caution for brushes leaves to the label. In doubt a word is on the list.

/** By kind, a line a language or two: pieces of names as `foldWords` gives them, within a longer word too unless `\b` ends them. */
const wordsOf = {
  solvent: [
    'thinner|thinning|solvent(?! free)|(white|mineral|methylated|surgical|petroleum|odou?rless) spirit|\\bmeths\\b|\\bturps|turpent',
    'aceton|alcohol|ethanol|methanol|propanol|isoprop|\\bipa\\b|naphth|benzin|benzen|lighter fluid|xyl(en|ol)|tolu(en|ol)|butanon',
    '(?<!pipe ?)cleaner|(paint|varnish|polish|lacquer) ?(remover|stripper)|enamel|lacquer|linseed',
    '\\boils\\b|\\boil (\\w+ ){0,2}(wash|paint|colou?r|glaze|filter)',
    'verdue?nn|loe?se?(ungs)?mittel|terpent|spiritus|alkohol|naphta|(?<!p(feif|ijp)en ?)reiniger|(farb|lack)entferner|abbeizer|kunstharz|\\bnitro',
    'emaill|leinoe?l|\\boe?l ?(farbe|wash|lasur)',
    'diluant|solvant|dissolvant|terebent|alcool|essence (f\\b|miner)|nettoyant|nettoie|decapant|\\bemail\\b|a l huile|huile de lin',
    'aguarras|trementin|diluyent|bencina|limpia|quita ?(esmalte|pintura)|esmalte|\\boleos?\\b|aceite de lin',
    'acquaragia|diluent|\\balcol\\b|\\bnafta|pulisci|pulitore|sverniciat|\\bsmalt[oi]\\b|\\bad? olio\\b|olio di lino',
    'oplosmiddel|afbijt|olie ?(verf|wash)|lijnolie',
    'rozciencz|rozpuszcz|benzyn|spirytus|denatur|izoprop|zmywacz|czyszcz|emali[aei]|olejn|olej lnian',
  ],
  /** Of an extra; a colour may be called so and be harmless. */
  solventAmongExtras: ['^spirits?$|petroleum|petrole\\b|paraffin|kerosene|kerosin|gasolin'],
  glueAmongExtras: [
    'super ?(glue|kleber|colle|colla|pegamento|lijm|klej)|cyanoac|cianoac|cyjanoac|cyjanoak|\\b(ca|cyano) glue',
    '(plastic|poly|polystyrene|model|liquid|contact) (cement|glue|adhesive)',
    '(sekunden|plastik|kunststoff|modellbau|kontakt)kleber',
    '\\bcolles? (cyano|forte|instantan|plastique|contact|(a|de|pour) (maquette|contact|plastique))',
    'pegamento (instantaneo|rapido|plastico|(de|para) (contacto|plastico|maqueta|modelismo))',
    '\\bcoll[ae] (istantane|ciano|rapid|plastic|(per|da|a) (plastica|modellismo|contatto))',
    '(seconde|plastic|kunststof|modelbouw|contact) ?lijm',
    '\\bklej (cyjano|blyskawiczn|sekundow|kontaktow|modelarsk|do (plastiku|modeli))',
  ],
  sprayAmongExtras: [
    'spray(?! ?(bottle|booth|gun|mask|flasche|fles))|aerosol|aerozol|rattle ?can|sprue?h(?! ?flasche)',
    '\\bbombes?\\b|bombolett|spuitbus|sprej',
  ],
} as const;

type Kind = keyof typeof wordsOf;

const patternOf = new Map(
  Object.entries(wordsOf).map(([kind, lines]) => [kind, new RegExp(lines.join('|'))]),
);

/** Whether a name tells of any of these kinds: `White-Spirit, 1 l` of a solvent, `marsh spirit green` of nothing. */
export function tellsOf(name: string, ...kinds: readonly Kind[]): boolean {
  const words = foldWords(name);
  return kinds.some((kind) => patternOf.get(kind)?.test(words) === true);
}

/** Small letters without accents, words parted by single blanks: `Térébenthine (0,5 l)` gives `terebenthine 0 5 l`. */
const foldWords = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ł', 'l')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
