// Estimate: the surface of one figure by part. In: a figure and the assumptions. Out: areas in cm2, mark and doubt.
import { assume, likely, logSpread } from '../assumptions/look-up.js';
import { type Assumptions, type Mark, nameForFigure, weakestMark } from '../model/assumption.js';
import type { Figure } from '../model/figure.js';
import { reachedOf } from '../model/measured.js';
import { isMeasuredByLength, type KitItem } from '../model/words.js';
import type { FigureArea, Surface } from '../model/work.js';
import { type BodyPart, bodyParts, isBasePart, type Part, partsOfFigure } from '../model/zones.js';
import { measureBase, measureBox, squareCm2 } from './measure-base.js';

/**
 * Bare skin of a person made small, eyes `eyeMm` above the soles, in cm2: area goes with the square of height.
 * 28 mm gives 5.604. Du Bois & Du Bois 1916; eye level: Drillis & Contini 1966.
 */
export function bareSkinCm2(eyeMm: number, assumptions: Assumptions): number {
  const eyeLevelMm = likely(assumptions, 'eye level') * likely(assumptions, 'stature of a person');
  return likely(assumptions, 'skin of a person') * (eyeMm / eyeLevelMm) ** 2;
}

/**
 * Areas of every part of a figure. What is measured on the painter's model takes the place of body and kit (or hull), and
 * the painter's own total that of both; the parts keep their proportions. A figure without body, kit, box, model and base
 * has no parts and no area.
 */
export function measureFigure(figure: Figure, assumptions: Assumptions): FigureArea {
  const parts = areasOfParts(figure, assumptions);
  const wholeCm2 = sum([...parts].filter(([part]) => !isBasePart(part)));
  // The painter's own total rests on nothing else, only its parts do on the shares.
  const estimated = isOwn(figure) ? [] : [...parts.keys()];
  const inputs = [...new Set(estimated.flatMap((part) => inputsOfPart(figure, part)))];
  return {
    figure,
    parts,
    wholeCm2,
    withBaseCm2: sum([...parts]),
    surface: surfaceOf(figure, parts),
    mark: weakestMark([ownMark(figure), ...inputs.map((name) => assume(assumptions, name).mark)]),
    biggestDoubt: biggestDoubt(figure, parts, assumptions),
  };
}

const isOwn = ({ areaCm2, model }: Figure): boolean => areaCm2 !== undefined || model !== undefined;

const ownMark = ({ areaCm2, model }: Figure): Mark =>
  areaCm2 === undefined && model !== undefined ? 'your model' : 'yours';

/** Names of the doubtful factors that the area of a part rests on; none where the painter gave the total or the model. */
function factorsOfPart(figure: Figure, part: Part): readonly string[] {
  return isOwn(figure) ? [] : surfaceFactors(figure, part);
}

/** Names of everything that the area of a part rests on, also of what is held as exact. */
export function inputsOfPart(figure: Figure, part: Part): readonly string[] {
  const share = isBody(part) ? [`share ${part}`] : [];
  const isMade = isBasePart(part) || part === 'hull' || isMeasuredByLength(figure.build) || isOwn(figure);
  const person = isMade ? [] : ['skin of a person', 'stature of a person', 'eye level'];
  return [...person, ...share, ...factorsOfPart(figure, part)];
}

function surfaceFactors(figure: Figure, part: Part): readonly string[] {
  if (isBasePart(part)) return [];
  if (figure.boxMm === undefined && isMeasuredByLength(figure.build)) return lengthFactors(figure, part);
  if (part === 'hull') return figure.boxMm === undefined ? [] : [`relief ${figure.build}`];
  const sculpt = nameForFigure('sculpt', figure.figure);
  if (isBody(part)) return [`dress ${figure.dress}`, ...buildFactors(figure), 'relief', sculpt];
  return [`kit ${part}`, 'relief', sculpt];
}

/** The spread between one creature or thing and the next is each figure's own. */
function lengthFactors({ figure, build }: Figure, part: Part): readonly string[] {
  const surface = nameForFigure(`surface ${build}`, figure);
  return part === 'hide' || part === 'hull' ? [surface] : [surface, `${part} of a creature`];
}

/** True scale is what others are measured by, so nothing is assumed of it. */
const buildFactors = ({ build }: Figure): string[] => (build === 'true scale' ? [] : [`build ${build}`]);

/**
 * What some parts of a figure rest on: parts of the same factors together, each group's share of the area. An empty area
 * gives an empty list; what the painter measured, or is held as exact, stands under no factor.
 */
export function surfaceOf(figure: Figure, parts: ReadonlyMap<Part, number>): Surface {
  const total = sum([...parts]);
  const shares = new Map<string, { factors: readonly string[]; share: number }>();
  for (const [part, areaCm2] of total > 0 ? parts : []) {
    const factors = factorsOfPart(figure, part);
    const key = factors.join('\n');
    shares.set(key, { factors, share: (shares.get(key)?.share ?? 0) + areaCm2 / total });
  }
  return [...shares.values()];
}

/**
 * How much of the log doubt of an area each factor causes: its own spread times the share of the area it moves.
 * An empty area gives an empty map.
 */
export function areaDoubts(
  figure: Figure,
  parts: ReadonlyMap<Part, number>,
  assumptions: Assumptions,
): Map<string, number> {
  const total = sum([...parts]);
  const doubts = new Map<string, number>();
  for (const [part, areaCm2] of total > 0 ? parts : []) {
    for (const name of factorsOfPart(figure, part)) {
      const spread = logSpread(assume(assumptions, name)) * (areaCm2 / total);
      doubts.set(name, (doubts.get(name) ?? 0) + spread);
    }
  }
  return doubts;
}

function biggestDoubt(figure: Figure, parts: ReadonlyMap<Part, number>, assumptions: Assumptions): string {
  const doubts = [...areaDoubts(figure, parts, assumptions)].filter(([, spread]) => spread > 0);
  return doubts.sort(([, a], [, b]) => b - a)[0]?.[0] ?? '';
}

const isBody = (part: Part): part is BodyPart => (bodyParts as readonly Part[]).includes(part);
const sum = (entries: readonly (readonly [Part, number])[]): number =>
  entries.reduce((total, [, areaCm2]) => total + areaCm2, 0);

/** Named parts of a model as they are measured, all others by their factors, scaled to what they share. */
function areasOfParts(figure: Figure, assumptions: Assumptions): Map<Part, number> {
  const measured = reachedParts(figure, assumptions);
  const isScaled = (part: Part): boolean => !isBasePart(part) && !measured.has(part);
  const parts = partsOfFigure(figure);
  const plain = new Map(
    parts.map((part) => [part, measured.get(part) ?? partCm2(figure, part, assumptions)] as const),
  );
  const shared = figure.model === undefined ? figure.areaCm2 : (measured.get('') ?? 0);
  const scaled = scaleTo(plain, shared, isScaled);
  return figure.model === undefined ? scaled : scaleTo(scaled, figure.areaCm2, (part) => !isBasePart(part));
}

/** What a brush reaches of a model, cm2 by part; '' for what has no name of its own. */
function reachedParts({ model }: Figure, assumptions: Assumptions): Map<Part, number> {
  const areas = new Map<Part, number>();
  for (const piece of model?.pieces ?? []) {
    const { area } = reachedOf([piece], likely(assumptions, 'sky a brush needs'));
    areas.set(piece.part, (areas.get(piece.part) ?? 0) + area);
  }
  return areas;
}

/** Some parts in their proportions, so that they come to a total; as they are without one. */
function scaleTo(
  parts: Map<Part, number>,
  totalCm2: number | undefined,
  isScaled: (part: Part) => boolean,
): Map<Part, number> {
  if (totalCm2 === undefined) return parts;
  const so = sum([...parts].filter(([part]) => isScaled(part)));
  const scale = so === 0 ? 0 : totalCm2 / so;
  return new Map([...parts].map(([part, cm2]) => [part, isScaled(part) ? cm2 * scale : cm2]));
}

function partCm2(figure: Figure, part: Part, assumptions: Assumptions): number {
  if (isBasePart(part)) return basePartCm2(figure, part);
  const product = surfaceFactors(figure, part).reduce((total, name) => total * likely(assumptions, name), 1);
  // Of a model only proportions count.
  const ofModel = figure.model === undefined ? 0 : 1;
  if (figure.boxMm !== undefined && part === 'hull') return measureBox(figure.boxMm) * product;
  const times = part === 'hide' || part === 'hull' ? 1 : countOfKit(figure, part as KitItem);
  if (isMeasuredByLength(figure.build)) return squareCm2(figure.longMm ?? ofModel) * product * times;
  if (part === 'hull') return ofModel;
  const skin = bareSkinCm2(figure.eyeMm ?? ofModel, assumptions) * product;
  if (isBody(part)) return skin * bodyShare(part, assumptions);
  return skin * times;
}

/** A part's share of the body, 0 to 1: of the sum of all shares, so that a painter's own share adds no skin. */
function bodyShare(part: BodyPart, assumptions: Assumptions): number {
  const sum = bodyParts.reduce((total, one) => total + likely(assumptions, `share ${one}`), 0);
  return likely(assumptions, `share ${part}`) / sum;
}

function basePartCm2(figure: Figure, part: Part): number {
  if (figure.base === undefined) return 0;
  const { topCm2, edgeCm2 } = measureBase(figure.base, figure.baseHighMm);
  return (part === 'base top' ? topCm2 : edgeCm2) / figure.perBase;
}

const countOfKit = (figure: Figure, item: KitItem): number =>
  figure.kit.filter((worn) => worn.item === item).reduce((total, { count }) => total + count, 0);
