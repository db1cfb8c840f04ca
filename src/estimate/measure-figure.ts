// Estimate: the surface of one figure by part. In: a figure and the assumptions. Out: areas in cm2, mark and doubt.
import { assume, likely, logSpread } from '../assumptions/look-up.js';
import { type Assumptions, weakestMark } from '../model/assumption.js';
import type { Figure } from '../model/sheets.js';
import type { KitItem } from '../model/words.js';
import type { FigureArea, Surface } from '../model/work.js';
import { type BodyPart, bodyParts, type Part, partsOfFigure } from '../model/zones.js';
import { measureBase, measureBox } from './measure-base.js';

/**
 * Bare skin of a person made small, eyes `eyeMm` above the soles, in cm2: area goes with the square of height.
 * 28 mm gives 5.604. Du Bois & Du Bois 1916; eye level: Drillis & Contini 1966.
 */
export function bareSkinCm2(eyeMm: number, assumptions: Assumptions): number {
  const eyeLevelMm = likely(assumptions, 'eye level') * likely(assumptions, 'stature of a person');
  return likely(assumptions, 'skin of a person') * (eyeMm / eyeLevelMm) ** 2;
}

/**
 * Areas of every part of a figure. The painter's own total takes the place of body and kit (or hull);
 * the parts keep their proportions. A figure without body, kit, box and base has no parts and no area.
 */
export function measureFigure(figure: Figure, assumptions: Assumptions): FigureArea {
  const own = ownScale(figure, assumptions);
  const parts = new Map<Part, number>();
  for (const part of partsOfFigure(figure)) {
    const scale = isBase(part) ? 1 : own;
    parts.set(part, partCm2(figure, part, assumptions) * scale);
  }
  const wholeCm2 = sum([...parts].filter(([part]) => !isBase(part)));
  // The painter's own total rests on nothing else, only its parts do on the shares.
  const estimated = figure.areaCm2 === undefined ? [...parts.keys()] : [];
  const inputs = [...new Set(estimated.flatMap((part) => inputsOfPart(figure, part)))];
  return {
    figure,
    parts,
    wholeCm2,
    withBaseCm2: sum([...parts]),
    surface: surfaceOf(figure, parts),
    mark: weakestMark(['yours', ...inputs.map((name) => assume(assumptions, name).mark)]),
    biggestDoubt: biggestDoubt(figure, parts, assumptions),
  };
}

/** Names of the doubtful factors that the area of a part rests on; none where the painter gave the total. */
function factorsOfPart(figure: Figure, part: Part): readonly string[] {
  return figure.areaCm2 === undefined ? surfaceFactors(figure, part) : [];
}

/** Names of everything that the area of a part rests on, also of what is held as exact. */
export function inputsOfPart(figure: Figure, part: Part): readonly string[] {
  const share = isBody(part) ? [`share ${part}`] : [];
  const isMade = isBase(part) || part === 'hull' || figure.areaCm2 !== undefined;
  const person = isMade ? [] : ['skin of a person', 'stature of a person', 'eye level'];
  return [...person, ...share, ...factorsOfPart(figure, part)];
}

function surfaceFactors(figure: Figure, part: Part): readonly string[] {
  if (isBase(part)) return [];
  if (part === 'hull') return [`relief ${figure.build}`];
  if (isBody(part)) return [`dress ${figure.dress}`, ...buildFactors(figure), 'relief'];
  return [`kit ${part}`, 'relief'];
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

const isBase = (part: Part): boolean => part === 'base top' || part === 'base edge';
const isBody = (part: Part): part is BodyPart => (bodyParts as readonly Part[]).includes(part);
const sum = (entries: readonly (readonly [Part, number])[]): number =>
  entries.reduce((total, [, areaCm2]) => total + areaCm2, 0);

/** What the parts are multiplied with so that body and kit come to the painter's own total; 1 without one. */
function ownScale(figure: Figure, assumptions: Assumptions): number {
  if (figure.areaCm2 === undefined) return 1;
  const estimated = partsOfFigure(figure)
    .filter((part) => !isBase(part))
    .reduce((total, part) => total + partCm2(figure, part, assumptions), 0);
  return estimated === 0 ? 0 : figure.areaCm2 / estimated;
}

function partCm2(figure: Figure, part: Part, assumptions: Assumptions): number {
  if (isBase(part)) return basePartCm2(figure, part);
  const product = surfaceFactors(figure, part).reduce((total, name) => total * likely(assumptions, name), 1);
  if (part === 'hull') return figure.boxMm === undefined ? 0 : measureBox(figure.boxMm) * product;
  const skin = bareSkinCm2(figure.eyeMm ?? 0, assumptions) * product;
  if (isBody(part)) return skin * bodyShare(part, assumptions);
  return skin * countOfKit(figure, part as KitItem);
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
