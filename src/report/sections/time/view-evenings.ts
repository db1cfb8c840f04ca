// Report view: the work evening by evening. In: the plan's time. Out: rows with a bar each, what is painted in words.

import type { BenchSums } from '../../../model/bench.js';
import type { Evening, EveningPiece } from '../../../model/time.js';
import { layers } from '../../../model/words.js';
import { shareOf } from '../../drawing/scale.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordMinutes } from '../../words/word-minutes.js';
import { nameOf } from '../../words/word-name.js';
import { listOf } from '../../words/word-numbers.js';
import { sharedWords } from '../../words/words.js';
import { linkCard } from './link-cards.js';
import type { TimeWords } from './words.js';

interface EveningRow {
  readonly no: string;
  readonly minutes: string;
  /** What is painted, unit by unit. */
  readonly says: readonly {
    readonly unit: string;
    /** Where on bench.html; '' where it has no card, or an earlier line of the evening leads there. */
    readonly card: string;
    readonly what: string;
  }[];
  /** Units that are finished on it; '' where none is. */
  readonly finished: string;
  readonly bar: EveningBar;
}

/** Shares are of a whole evening. */
export interface EveningBar {
  readonly pieces: readonly {
    /** A layer's key, or `waiting`. */
    readonly key: string;
    readonly share: number;
  }[];
}

/** Evenings shown at once, and at most with those folded away. */
const [shownRows, mostRows] = [3, 60];

export interface EveningsView {
  readonly layers: readonly { readonly key: string; readonly layer: string }[];
  /** True where some evening waits. */
  readonly waits: boolean;
  /** Evenings shown at once, and folded away. */
  readonly first: readonly EveningRow[];
  readonly folded: readonly EveningRow[];
  /** Said where more evenings are spelled out than listed; else ''. */
  readonly more: string;
}

/** In order, from the first. */
export function viewEvenings({ plan, words }: ViewInputs, texts: TimeWords): EveningsView {
  const { time } = plan;
  const listed = time.spelledOut.slice(0, mostRows);
  const finished = new Map<number, string[]>();
  for (const { unit, doneOnEvening } of time.units) {
    if (doneOnEvening === undefined) continue;
    finished.set(doneOnEvening, [...(finished.get(doneOnEvening) ?? []), nameOf(unit.unit)]);
  }
  const viewEvening = (evening: Evening, no: number, wordPiece: TimeWords['piece']): EveningRow => ({
    no: words.count(no),
    minutes: wordMinutes(evening.minutes, words),
    says: listPieces(evening.pieces, { wordPiece, bench: plan.summary.bench }),
    finished: listOf(finished.get(no) ?? []),
    bar: viewBar(evening, time.eveningMin),
  });
  const numbered = [...listed.entries()];
  const viewAll = (some: typeof numbered, wordPiece: TimeWords['piece']): EveningRow[] =>
    some.map(([at, evening]) => viewEvening(evening, at + 1, wordPiece));
  const first = viewAll(numbered.slice(0, shownRows), texts.piece);
  const folded = viewAll(numbered.slice(shownRows), texts.shortPiece);
  const keys = new Set([...first, ...folded].flatMap(({ bar }) => bar.pieces.map(({ key }) => key)));
  return {
    layers: layers
      .map((layer) => ({ layer: sharedWords.layers[layer], key: keyOf(layer) }))
      .filter(({ key }) => keys.has(key)),
    waits: keys.has('waiting'),
    ...{ first, folded },
    more: time.spelledOut.length > mostRows ? texts.more(mostRows, time.spelledOut.length) : '',
  };
}

const keyOf = (layer: string): string => layer.replaceAll(' ', '-');

const viewBar = ({ pieces }: Evening, eveningMin: number): EveningBar => ({
  pieces: pieces.map((piece) => ({
    key: piece.what === 'waiting' ? 'waiting' : keyOf(piece.pass.layer),
    share: shareOf(piece.minutes, eveningMin),
  })),
});

interface Saying {
  readonly wordPiece: TimeWords['piece'];
  readonly bench: BenchSums;
}

/** Pieces of one unit that follow one another share its name; on each evening it leads to the first of them all. */
function listPieces(pieces: readonly EveningPiece[], { wordPiece, bench }: Saying): EveningRow['says'] {
  const says: { unit: string; card: string; what: string }[] = [];
  for (const piece of pieces) {
    const unit = piece.what === 'waiting' ? '' : nameOf(piece.unit);
    const what = wordPiece(piece);
    const last = says.at(-1);
    if (last !== undefined && last.unit === unit) last.what += `; ${what}`;
    else {
      const isNew = says.every((earlier) => earlier.unit !== unit);
      says.push({ unit, card: isNew ? linkCard(piece, bench) : '', what });
    }
  }
  return says;
}
