// Checks: what is left in words. In: a text such as `almost half`, `2/3`, `environ 40 %`. Out: a share or the bare text that is
// left once the words of doubt are taken off, and whether there were any.
// Dictionary words of English, German, French, Spanish, Italian, Dutch and Polish.
import { isPlain } from '../../match-header.js';

/** Accents, case and width do not count; `½` is `1/2`. */
const fold = (text: string): string =>
  (isPlain(text) ? text : text.normalize('NFKD').replace(/\p{M}+/gu, ''))
    .toLowerCase()
    .replaceAll('ł', 'l')
    .replaceAll('\u2044', '/')
    .replace(/\s+/g, ' ')
    .trim();

const listOf = (words: string): readonly string[] => fold(words).split(', ');

const shares: ReadonlyMap<string, number> = new Map(
  (
    [
      [
        1,
        'full, new, unopened, sealed, voll, volle, neu, ungeöffnet, plein, pleine, pleins, neuf, neuve, jamais ouvert, lleno, llena, llenos, nuevo, nueva, sin abrir, pieno, piena, pieni, nuovo, nuova, mai aperto, mai aperta, vol, volle, nieuw, ongeopend, pełny, pełna, pełne, nowy, nowa, nowe, nieotwarty, nieotwarta, nieotwarte',
      ],
      [0, 'empty, leer, leere, vide, vides, vacío, vacía, vuoto, vuota, leeg, pusty, pusta, puste'],
      [
        1 / 2,
        'half, half full, halb, halb voll, halbvoll, halbe, hälfte, die hälfte, moitié, à moitié, la moitié, à moitié plein, mitad, la mitad, a la mitad, medio lleno, metà, a metà, mezzo, mezzo pieno, halfvol, half vol, halve, helft, de helft, połowa, pół, do połowy',
      ],
      [
        1 / 3,
        'third, a third, one third, Drittel, ein Drittel, tiers, un tiers, tercio, un tercio, terzo, un terzo, derde, een derde, jedna trzecia, jednej trzeciej',
      ],
      [2 / 3, 'two thirds, zwei Drittel, deux tiers, dos tercios, due terzi, twee derde, dwie trzecie'],
      [
        1 / 4,
        'quarter, a quarter, one quarter, Viertel, ein Viertel, quart, un quart, cuarto, un cuarto, quarto, un quarto, kwart, een kwart, ćwierć, jedna czwarta, jednej czwartej',
      ],
      [
        3 / 4,
        'three quarters, drei Viertel, dreiviertel, trois quarts, tres cuartos, tre quarti, driekwart, drie kwart, trzy czwarte',
      ],
    ] as const
  ).flatMap(([share, words]) => listOf(words).map((word) => [word, share] as const)),
);

const about = listOf(
  'still, noch, encore, ancora, nog, jeszcze, ~, ≈, ca., ca, circa, about, approx., approx, roughly, around, etwa, ungefähr, rund, environ, à peu près, aprox., aprox, cerca de, más o menos, pressappoco, ongeveer, zowat, ok., około, mniej więcej',
);
const almost = listOf('almost, nearly, fast, beinahe, presque, casi, quasi, bijna, haast, prawie, niemal');

/** What may stand behind a share: `1/2 full`. */
const fulls = [...shares.keys()].filter((word) => shares.get(word) === 1);

/** What `almost empty` still holds, and `almost full` lacks. From memory. */
const almostShare = 0.1;
const longest = 40;
/** `1/2` to `9/10`. */
const fraction = /^(\d) ?\/ ?(\d\d?)$/;

export interface InWords {
  /** Of the whole, 0 to 1; undefined where the text is none of the words. */
  readonly share: number | undefined;
  /** The text without the words of doubt, and without the `full` of `60% full`; undefined where it has none. */
  readonly bare: string | undefined;
  readonly isRough: boolean;
}

/** As nearly every cell has it, without a word. */
const plainAmount = /^\d[\d.,]*\s?(?:%|ml|g)$/;

/** `about a third` is a third, roughly; `almost empty` a tenth, roughly. */
export function readWords(written: string): InWords {
  if (written.length > longest || plainAmount.test(written))
    return { share: undefined, bare: undefined, isRough: false };
  const text = fold(written);
  const sure = without(text, about);
  const whole = without(sure, almost);
  const sized = without(whole, about);
  const isRough = sized !== text;
  const part = shares.has(sized) ? sized : without(sized, fulls);
  const share = shares.get(part) ?? fractionOf(part);
  const bare = part === text ? undefined : part;
  if (whole === sure || share === undefined) return { share, bare, isRough };
  const isEnd = share === 0 || share === 1;
  return { share: isEnd ? Math.abs(share - almostShare) : share, bare, isRough };
}

/** One word of a list taken off, in front or behind. */
function without(text: string, words: readonly string[]): string {
  for (const word of words) {
    if (text.startsWith(word) && (text[word.length] === ' ' || !/\p{L}$/u.test(word)))
      return text.slice(word.length).trim();
    if (text.endsWith(` ${word}`)) return text.slice(0, -word.length).trim();
  }
  return text;
}

function fractionOf(text: string): number | undefined {
  const [, part, whole] = fraction.exec(text) ?? [];
  const share = Number(part) / Number(whole);
  return share > 0 && share <= 1 ? share : undefined;
}
