// Command line: what was measured of model files, in words. In: measures, whom they are like. Out: lines.
import type { MeasuredFigure } from '../sheets/measure-models.js';

interface Likeness {
  readonly words: string;
  readonly ratio: number;
}

/** A person so much smaller or larger is no likeness. */
const farthest = 1.5;

export function wordMeasured(figure: MeasuredFigure, likeness: Likeness): string[] {
  const { files, surfaceCm2, reached, parts } = figure;
  const share =
    surfaceCm2 === 0 ? '' : `, ${Math.round((100 * reached.area) / surfaceCm2)} % of its ${cm2(surfaceCm2)}`;
  const error = reached.error < reached.area / 1000 ? '' : `, give or take ${cm2(reached.error)}`;
  const named = parts.filter(({ part }) => part !== '');
  return [
    ...files.map(wordFile),
    `A brush reaches ${cm2(reached.area)}${error}${share}. What it stands on is left out.`,
    parts.length === 1 || named.length === 0
      ? 'It is in one part: the body chart divides it.'
      : `Parts: ${parts.map(({ part, cm2: area }) => `${part || 'the rest'} ${cm2(area)}`).join(', ')}. Zones and schemes may name them; the body chart divides what they leave.`,
    wordLikeness(likeness),
  ];
}

function wordFile({ name, triangles, flat, up, highMm }: MeasuredFigure['files'][number]): string {
  const without = flat === 0 ? '' : `, without ${flat.toLocaleString('en')} that have no area`;
  return `${name}: ${Number(highMm.toPrecision(3))} mm high (along ${up}), ${triangles.toLocaleString('en')} triangles${without}.`;
}

function wordLikeness({ words, ratio }: Likeness): string {
  const times = ratio.toFixed(2);
  const isNear = ratio < farthest && ratio > 1 / farthest;
  return isNear
    ? `That is about ${words} of that height, ${times} of it.`
    : `It is like no person of that height: ${times} of ${words}.`;
}

/** To a thousandth, where there is so little. */
const cm2 = (area: number): string => `${area < 1 ? Number(area.toPrecision(2)) : area.toFixed(1)} cm2`;
