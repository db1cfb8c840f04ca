// Report view: the work evening by evening. In: the plan's time. Out: rows with a bar each, what is painted in words.

import type { Evening, EveningPiece } from '../../../model/time.js';
import { layers } from '../../../model/words.js';
import { shareOf } from '../../drawing/scale.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordMinutes } from '../../words/word-minutes.js';
import { nameOf } from '../../words/word-name.js';
import { listOf, type NumberWords } from '../../words/word-numbers.js';

interface EveningRow {
  readonly no: string;
  readonly minutes: string;
  /** What is painted, unit by unit. */
  readonly says: readonly { readonly unit: string; readonly what: string }[];
  /** Units that are finished on it; '' where none is. */
  readonly finished: string;
  readonly bar: EveningBar;
}

/** Shares are of a whole evening. */
export interface EveningBar {
  /** Unique within the page, letters, digits and hyphens only. */
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly pieces: readonly {
    /** A layer's key, or `waiting`. */
    readonly key: string;
    readonly share: number;
    readonly title: string;
  }[];
}

/** Evenings shown at once, and at most with those folded away. */
const [shownRows, mostRows] = [7, 90];

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
export function viewEvenings({ plan, words }: ViewInputs): EveningsView {
  const { time } = plan;
  const listed = time.spelledOut.slice(0, mostRows);
  const finished = new Map<number, string[]>();
  for (const { unit, doneOnEvening } of time.units) {
    if (doneOnEvening === undefined) continue;
    finished.set(doneOnEvening, [...(finished.get(doneOnEvening) ?? []), nameOf(unit.unit)]);
  }
  const rows = listed.map((evening, at): EveningRow => {
    const no = at + 1;
    return {
      no: words.count(no),
      minutes: wordMinutes(evening.minutes, words),
      says: wordPieces(evening.pieces, words),
      finished: listOf(finished.get(no) ?? []),
      bar: viewBar(evening, no, { eveningMin: time.eveningMin, words }),
    };
  });
  const keys = new Set(rows.flatMap(({ bar }) => bar.pieces.map(({ key }) => key)));
  return {
    layers: layers.map((layer) => ({ layer, key: keyOf(layer) })).filter(({ key }) => keys.has(key)),
    waits: keys.has('waiting'),
    first: rows.slice(0, shownRows),
    folded: rows.slice(shownRows),
    more:
      time.spelledOut.length > mostRows
        ? `The first ${words.count(mostRows)} evenings are listed; plan.json holds ${words.count(time.spelledOut.length)}.`
        : '',
  };
}

const keyOf = (layer: string): string => layer.replaceAll(' ', '-');

interface BarInputs {
  readonly eveningMin: number;
  readonly words: NumberWords;
}

function viewBar({ pieces, minutes }: Evening, no: number, { eveningMin, words }: BarInputs): EveningBar {
  return {
    id: `evening-${no}`,
    title: `Evening ${words.count(no)}`,
    says: `${wordMinutes(minutes, words)} of ${wordMinutes(eveningMin, words)}; the text beside it says what is painted.`,
    pieces: pieces.map((piece) => ({
      key: piece.what === 'waiting' ? 'waiting' : keyOf(piece.pass.layer),
      share: shareOf(piece.minutes, eveningMin),
      title: `${wordPiece(piece, words)}, ${wordMinutes(piece.minutes, words)}`,
    })),
  };
}

function wordPiece(piece: EveningPiece, words: NumberWords): string {
  if (piece.what === 'waiting') return 'waiting';
  return `${nameOf(piece.unit)}: ${wordWork(piece, words)}`;
}

type Work = Exclude<EveningPiece, { what: 'waiting' }>;

/** `9 highlight on 12`, `spray 12 varnish on 24`, `15 base coat, coat 2, on 12`. */
function wordWork({ what, pass, figures }: Work, words: NumberWords): string {
  const coat = pass.coat > 1 ? `, coat ${pass.coat},` : '';
  const spray = what === 'spraying' ? 'spray ' : '';
  return `${spray}${pass.step} ${pass.layer}${coat} on ${words.tenth(figures)}`;
}

/** Pieces of one unit that follow one another share its name. */
function wordPieces(pieces: readonly EveningPiece[], words: NumberWords): EveningRow['says'] {
  const says: { unit: string; what: string }[] = [];
  for (const piece of pieces) {
    const unit = piece.what === 'waiting' ? '' : piece.unit;
    const what =
      piece.what === 'waiting' ? `wait ${wordMinutes(piece.minutes, words)}` : wordWork(piece, words);
    const last = says.at(-1);
    if (last !== undefined && last.unit === unit) last.what += `; ${what}`;
    else says.push({ unit, what });
  }
  return says;
}
