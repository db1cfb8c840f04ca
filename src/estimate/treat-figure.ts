// Estimate: one step on one figure. In: a step, a measured figure, the assumptions. Out: film, loss, mark and doubts,
// which every batch of that figure in that scheme shares.

import { usualMethod } from '../assumptions/layers.js';
import { assume, likely, logSpread } from '../assumptions/look-up.js';
import { type Assumptions, type Mark, weakestMark } from '../model/assumption.js';
import type { CoatChoices, CoatReason } from '../model/colour.js';
import type { OwnZone, Paint, Step } from '../model/sheets.js';
import type { Method } from '../model/words.js';
import type { FigureArea, Surface } from '../model/work.js';
import { onFigureMl, sprayTransfer } from './estimate-film.js';
import { areaDoubts, inputsOfPart, surfaceOf } from './measure-figure.js';
import { resolveZone } from './resolve-zone.js';

/** One paint of a step on one figure. */
export interface Treatment {
  readonly step: Step;
  readonly method: Method;
  readonly paint: string;
  readonly mixShare: number;
  /** The zone on one figure. */
  readonly areaCm2: number;
  readonly surface: Surface;
  readonly areaShare: number;
  readonly coats: number;
  /** Why so many, where colours decided it. */
  readonly coatsBecause: CoatReason | undefined;
  readonly thin: number;
  /** This paint's share of what ends on one figure. */
  readonly onFigureMl: number;
  readonly transfer: number;
  /** Of one sitting. */
  readonly leftoverMl: number;
  readonly painter: number;
  readonly mark: Mark;
  /** Log spread that each factor brings to what is on the figure and lost on the way to it. */
  readonly doubts: ReadonlyMap<string, number>;
  readonly leftoverSpread: number;
}

/** The sheets and assumptions that a treatment is worked out from. */
export interface Workbench {
  readonly zones: readonly OwnZone[];
  readonly paints: ReadonlyMap<string, Paint>;
  readonly assumptions: Assumptions;
  /** Coats that colours ask for where the scheme leaves them blank. */
  readonly coats: CoatChoices;
}

/** One treatment per paint of the step; none where the figure has no part of the zone. */
export function treatFigure(step: Step, area: FigureArea, bench: Workbench): Treatment[] {
  const { parts: covered, assumed } = resolveZone(step.zone, area, bench);
  const areaCm2 = [...covered.values()].reduce((total, part) => total + part, 0);
  if (areaCm2 === 0) return [];
  const method = step.method ?? usualMethod(step.layer);
  const ofParts = [...covered.keys()].flatMap((part) => inputsOfPart(area.figure, part));
  const areaInputs = [...new Set([...ofParts, ...assumed])];
  const zoneDoubts = areaDoubts(area.figure, covered, bench.assumptions);
  return step.paints.map(({ paint, share }) => {
    const way = layDown(step, { paint, figure: area.figure.figure }, bench);
    const wetFilmMicrons = likely(bench.assumptions, `${method} wet film`);
    const mixMl = onFigureMl({ areaCm2, ...way, wetFilmMicrons });
    return {
      step,
      method,
      paint,
      mixShare: share,
      areaCm2,
      surface: surfaceOf(area.figure, covered),
      areaShare: way.areaShare,
      coats: way.coats,
      coatsBecause: way.coatsBecause,
      thin: way.thin,
      onFigureMl: mixMl * share,
      ...lose(method, area, bench.assumptions),
      mark: markOf([...areaInputs, ...way.defaulted, ...methodFactors(method)], bench.assumptions),
      doubts: new Map([...zoneDoubts, ...filmDoubts(method, bench.assumptions)]),
      leftoverSpread: logSpread(assume(bench.assumptions, `${method} leftover`)),
    };
  });
}

/**
 * Paint is put out once per step and batch: where a step lays one paint in one way on several zones, they share
 * one leftover in equal parts.
 */
export function shareLeftovers(treatments: readonly Treatment[]): Treatment[] {
  const palette = ({ step, paint, method }: Treatment): string => `${step.step}\n${paint}\n${method}`;
  const zones = new Map<string, number>();
  for (const one of treatments) zones.set(palette(one), (zones.get(palette(one)) ?? 0) + 1);
  return treatments.map((one) => ({ ...one, leftoverMl: one.leftoverMl / (zones.get(palette(one)) ?? 1) }));
}

interface LayDown {
  readonly areaShare: number;
  readonly coats: number;
  readonly coatsBecause: CoatReason | undefined;
  readonly thin: number;
  /** Names of the assumptions that filled a blank. */
  readonly defaulted: readonly string[];
}

/**
 * Coats, area share and thinning: the scheme's, else what colours ask for (coats) or the paint says (thinning), else the
 * layer's.
 */
function layDown(
  step: Step,
  { paint, figure }: { readonly paint: string; readonly figure: string },
  { paints, assumptions, coats }: Workbench,
): LayDown {
  const byColour = step.coats === undefined ? coats.get(step)?.get(figure) : undefined;
  const ownThin = step.thin ?? paints.get(paint)?.thin;
  const blanks: readonly [unknown, string][] = [
    [step.coats ?? byColour, `${step.layer} coats`],
    [step.areaShare, `${step.layer} area`],
    [ownThin, `${step.layer} thin`],
  ];
  return {
    coats: step.coats ?? byColour?.coats ?? likely(assumptions, `${step.layer} coats`),
    coatsBecause: byColour?.because,
    areaShare: step.areaShare ?? likely(assumptions, `${step.layer} area`) / 100,
    thin: ownThin ?? likely(assumptions, `${step.layer} thin`),
    defaulted: [
      ...blanks.filter(([given]) => given === undefined).map(([, name]) => name),
      ...(byColour?.inputs ?? []),
    ],
  };
}

const mostOfAirbrush = 'most transfer of an airbrush';
const isSpray = (method: Method): boolean => method === 'spray can' || method === 'airbrush';

function lose(method: Method, area: FigureArea, assumptions: Assumptions) {
  const transfer = likely(assumptions, `${method} transfer`);
  const spray = {
    fullTargetCm2: likely(assumptions, 'full target of a spray'),
    least: likely(assumptions, 'least catch of a spray'),
    most: likely(assumptions, 'most catch of a spray'),
    mostTransfer: method === 'airbrush' ? likely(assumptions, mostOfAirbrush) : 1,
  };
  return {
    transfer: isSpray(method) ? sprayTransfer(transfer, area.withBaseCm2, spray) : Math.min(1, transfer),
    leftoverMl: likely(assumptions, `${method} leftover`),
    painter: likely(assumptions, 'painter'),
  };
}

function methodFactors(method: Method): string[] {
  const spray = isSpray(method)
    ? ['full target of a spray', 'least catch of a spray', 'most catch of a spray']
    : [];
  const cap = method === 'airbrush' ? [mostOfAirbrush] : [];
  return [`${method} wet film`, `${method} transfer`, `${method} leftover`, 'painter', ...spray, ...cap];
}

function filmDoubts(method: Method, assumptions: Assumptions): [string, number][] {
  return [`${method} wet film`, `${method} transfer`].map((name) => [
    name,
    logSpread(assume(assumptions, name)),
  ]);
}

const markOf = (names: readonly string[], assumptions: Assumptions): Mark =>
  weakestMark(names.map((name) => assume(assumptions, name).mark));
