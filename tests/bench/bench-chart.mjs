// Bench: what the tool says of open models against what is measured on them, by kind. `npm run bench:chart FOLDER`, where
// FOLDER holds the packages of open-models/collections.mjs unpacked; not part of the tests, since they are large.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { argv } from 'node:process';
import { registry } from '../../.halfpot/modules/assumptions/registry.js';
import { measureFigure } from '../../.halfpot/modules/estimate/measure-figure.js';
import { reachedOf } from '../../.halfpot/modules/model/measured.js';
import { measureSurface } from '../../.halfpot/modules/surface/measure-surface.js';
import { openStore } from '../../.halfpot/modules/surface/triangle-store.js';
import { collections, kinds } from './open-models/collections.mjs';
import { readOpenModel } from './open-models/read-open-model.mjs';

const folder = argv[2];
if (folder === undefined) throw new Error('Write the folder with the unpacked packages.');
const z90 = 1.2815516;

const roots = {
  first: join(folder, 'meshes/art/meshes'),
  second: join(folder, 'usr/share/games', gamesFolder('megapack'), 'techs/megapack/factions'),
};

/** The folder of the second collection, by what lies in it. */
function gamesFolder(pack) {
  const games = join(folder, 'usr/share/games');
  const names = existsSync(games) ? readdirSync(games) : [];
  return names.find((name) => existsSync(join(games, name, 'techs', pack))) ?? '';
}

function read(model) {
  const [collection, name] = model.split(':');
  return readOpenModel(readFileSync(join(roots[collection], `${name}${collections[collection].ending}`)));
}

const spread = (triangles, axis) => {
  const values = triangles.flat().map((point) => point[axis]);
  const least = values.reduce((a, b) => Math.min(a, b));
  return { least, most: values.reduce((a, b) => Math.max(a, b)) };
};
const sizeOf = (triangles, axis) => {
  const { least, most } = spread(triangles, axis);
  return most - least;
};

/** What of a triangle lies above the ground, as a fan. */
function cutOff(corners, ground) {
  const above = corners.flatMap((a, k) => {
    const b = corners[(k + 1) % 3];
    const isIn = a[2] >= ground;
    if (isIn === b[2] >= ground) return isIn ? [a] : [];
    const share = (ground - a[2]) / (b[2] - a[2]);
    const between = a.map((value, axis) => value + share * (b[axis] - value));
    return isIn ? [a, between] : [between];
  });
  return above.slice(2).map((point, k) => [above[0], above[k + 1], point]);
}

/** A floor somewhat larger than what stands on it. */
function floorUnder(triangles) {
  const edge = 0.02 * Math.max(...[0, 1, 2].map((axis) => sizeOf(triangles, axis)));
  const [x, y] = [0, 1].map((axis) => spread(triangles, axis));
  const at = (px, py) => [px, py, spread(triangles, 2).least];
  const [a, b] = [at(x.least - edge, y.least - edge), at(x.most + edge, y.least - edge)];
  const [c, d] = [at(x.most + edge, y.most + edge), at(x.least - edge, y.most + edge)];
  return [
    [a, b, c],
    [a, c, d],
  ];
}

function reachedArea(triangles, floor) {
  const store = openStore();
  for (const corners of triangles) store.add(corners.flat());
  store.startPart('floor');
  for (const corners of floor) store.add(corners.flat());
  const { pieces } = measureSurface({ mesh: store.finish(), unitMm: 1 }, false);
  return reachedOf(
    pieces.filter(({ part }) => part === ''),
    registry.get('sky a brush needs').likely,
  ).area;
}

/** The length that the tool asks for, as a ruler would find it. */
function lengthBy(kind, triangles) {
  const across = sizeOf(triangles, 0) > sizeOf(triangles, 1) ? 0 : 1;
  if (kind === 'high') return sizeOf(triangles, 2);
  if (kind === 'long') return sizeOf(triangles, across);
  const { least, most } = spread(triangles, across);
  const place = (point) => (point[across] - least) / (most - least);
  const middle = triangles.flat().filter((point) => place(point) > 0.4 && place(point) < 0.6);
  return middle.reduce((top, point) => Math.max(top, point[2]), -Infinity) - spread(triangles, 2).least;
}

/** Likely area, and its P10 and P90 by all its doubts. Relief is left out: these models have none. */
function toolArea(name, { figure, length }, longMm) {
  const size = length === 'high' ? { eyeMm: longMm * registry.get('eye level').likely } : { longMm };
  const row = {
    figure: 'model',
    build: name,
    dress: 'none',
    kit: [],
    baseHighMm: 0,
    perBase: 1,
    ...size,
    ...figure,
  };
  const plain = new Map(registry).set('relief', { ...registry.get('relief'), low: 1, likely: 1, high: 1 });
  const { wholeCm2, surface } = measureFigure(row, plain);
  const sums = new Map();
  for (const { factors, share } of surface)
    for (const factor of factors) sums.set(factor, (sums.get(factor) ?? 0) + share);
  const deviation = Math.hypot(
    ...[...sums].map(([factor, share]) => {
      const { low, high } = plain.get(factor) ?? plain.get(factor.replace(/ \(.*$/, ''));
      return (share * Math.log(high / low)) / (2 * z90);
    }),
  );
  return { areaMm2: wholeCm2 * 100, within: Math.exp(z90 * deviation) };
}

function compare(name, kind, model) {
  const whole = read(model);
  const ground = Math.max(0, spread(whole, 2).least);
  const triangles = kind.stands ? whole.flatMap((corners) => cutOff(corners, ground)) : whole;
  const measured = reachedArea(triangles, kind.stands ? floorUnder(triangles) : []);
  const { areaMm2, within } = toolArea(name, kind, lengthBy(kind.length, triangles));
  const ratio = measured / areaMm2;
  return { ratio, isInside: ratio <= within && ratio >= 1 / within };
}

const mean = (all) => Math.exp(all.reduce((sum, { ratio }) => sum + Math.log(ratio), 0) / all.length);
const deviationOf = (all) =>
  Math.sqrt(all.reduce((sum, { ratio }) => sum + Math.log(ratio / mean(all)) ** 2, 0) / (all.length - 1));

function rowOf(name, all) {
  const inside = all.filter(({ isInside }) => isInside).length;
  return [name, all.length, mean(all).toFixed(2), deviationOf(all).toFixed(2), `${inside} of ${all.length}`];
}

const apart = [];
const rows = Object.entries(kinds).flatMap(([name, kind]) => {
  const all = kind.models.map((model) => compare(name, kind, model));
  const kept = all.filter((_, at) => at % 2 === 1);
  if (kind.length !== 'high') apart.push(...kept);
  return [rowOf(name, all), ...(kind.length === 'high' ? [] : [rowOf(`${name}, kept apart`, kept)])];
});
const header = ['kind', 'models', 'measured over tool, mean', 'log deviation', 'inside low to high'];
const table = [header, header.map(() => '---'), ...rows, rowOf('all kept apart', apart)];
console.log(table.map((cells) => `| ${cells.join(' | ')} |`).join('\n'));
