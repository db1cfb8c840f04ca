// Time: a job's lines as passes over its figures. In: lines in step order. Out: passes in the order they are painted.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { groupBy } from '../model/group-by.js';
import type { Pass } from '../model/time.js';
import type { Line } from '../model/work.js';
import { isSpray, minutesOfCoat } from './minutes-of-coat.js';

/** The sheets take no more coats; an own value for a layer may, and then the last pass stands for the rest. */
const mostCoats = 20;

/** One treatment of one zone: all paints of a mix together. */
interface Application {
  readonly line: Line;
  readonly paints: readonly string[];
  readonly figures: number;
  readonly palette: string;
  /** Minutes of one coat on one figure. */
  readonly coatMin: number;
}

/**
 * One pass for each coat of each layer of each step. Zones of a step that are treated alike share the pass, each coat
 * dries before the next, and what one palette serves within a step is set up once. No lines, no passes.
 */
export function listPasses(lines: readonly Line[], assumptions: Assumptions): Pass[] {
  const setUp = new Set<string>();
  return groupApplications(lines, assumptions).flatMap((group) => {
    const fresh = new Set<string>();
    let setupMin = 0;
    for (const { line, palette } of group) {
      const key = `${line.step}\n${palette}`;
      if (!setUp.has(key)) setupMin += likely(assumptions, `${line.method} setup`);
      setUp.add(key);
      fresh.add(palette);
    }
    return passesOf(group, { setupMin, palette: [...fresh].join('\n') }, assumptions);
  });
}

/** Applications that go over the same figures together: one layer of one step, sprayed or not. */
function groupApplications(lines: readonly Line[], assumptions: Assumptions): Application[][] {
  const groups = groupBy(mergeMixes(lines, assumptions), ({ line: { step, layer, method }, figures }) =>
    [step, layer, isSpray(method), figures].join('\n'),
  );
  return [...groups.values()];
}

/** A mix is one application. Where the log counts its paints apart, it goes over every figure that lacks one of them. */
function mergeMixes(lines: readonly Line[], assumptions: Assumptions): Application[] {
  const mixes = groupBy(lines, ({ step, zone, layer, method }) => [step, zone, layer, method].join('\n'));
  return [...mixes.values()].flatMap((mix) => {
    const [line] = mix;
    if (line === undefined) return [];
    const figures = mix.reduce((most, one) => Math.max(most, one.figures), 0);
    const paints = mix.map(({ paint }) => paint);
    const palette = [line.method, ...paints].join('\n');
    const { layer, method } = line;
    const coatMin = minutesOfCoat(
      { layer, method, zoneCm2: line.areaCm2, areaShare: line.areaShare },
      assumptions,
    );
    return [{ line, paints, figures, palette, coatMin }];
  });
}

interface Setup {
  readonly setupMin: number;
  readonly palette: string;
}

function passesOf(group: readonly Application[], setup: Setup, assumptions: Assumptions): Pass[] {
  const [first] = group;
  if (first === undefined) return [];
  const { step, layer, method } = first.line;
  const most = group.reduce((coats, { line }) => Math.max(coats, line.coats), 0);
  const driesMin = likely(assumptions, `${layer} dries`);
  return Array.from({ length: Math.min(mostCoats, Math.ceil(most)) }, (_, index) => {
    const laid = group.filter(({ line }) => line.coats > index);
    return {
      ...{ step, layer, coat: index + 1, spray: isSpray(method) },
      zones: laid.map(({ line }) => line.zone),
      paints: [...new Set(laid.flatMap(({ paints }) => paints))],
      palette: setup.palette,
      figures: first.figures,
      brushMinPerFigure: minutesOfPass(group, index),
      setupMin: index === 0 ? setup.setupMin : 0,
      driesMin,
    };
  });
}

function minutesOfPass(group: readonly Application[], index: number): number {
  const isLast = index === mostCoats - 1;
  return group.reduce((sum, { line, coatMin }) => {
    const left = Math.max(0, line.coats - index);
    return sum + coatMin * (isLast ? left : Math.min(1, left));
  }, 0);
}
