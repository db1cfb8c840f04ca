// Sample: the paint demand of a folder of CSV sheets, worked out a second time from the documented formulas, in plain
// loops that share no code with the tool. In: a folder. Out: JSON with ml per paint and cm2 per unit.
// Run: node tests/sample/compute-demand.mjs sample-data/low-sluice
// Only clean sheets: it checks nothing, reads dots as decimals, and refuses a log.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = process.argv[2];

/** Rows as objects keyed by header. Quotes may hold commas; nothing else of CSV is needed here. */
function rowsOf(sheet) {
  const file = join(folder, `${sheet}.csv`);
  if (!existsSync(file)) return [];
  const table = [];
  for (const line of readFileSync(file, 'utf8').trim().split('\n')) {
    const cells = [''];
    let quoted = false;
    for (const sign of line.trim()) {
      if (sign === '"') quoted = !quoted;
      else if (sign === ',' && !quoted) cells.push('');
      else cells[cells.length - 1] += sign;
    }
    table.push(cells);
  }
  const headers = table.shift();
  return table.map((cells) =>
    Object.fromEntries(headers.map((name, at) => [name, (cells[at] ?? '').trim()])),
  );
}

/** A number, or what a blank stands for. */
function number(text, blank) {
  if (text === undefined || text === '') return blank;
  const value = Number(text.replace('%', ''));
  if (Number.isNaN(value)) throw new Error(`not a number: ${text}`);
  return value;
}

// --- Likely values, by the names that the settings sheet takes -------------------------------------------------
const likely = {};
function set(before, list, after = '') {
  for (const item of list.split(', ')) {
    const [, name, value] = /^(.*) ([\d.]+)$/.exec(item);
    likely[before + name + after] = Number(value);
  }
}
// Lund & Browder 1944, adult, percent of skin.
set('share ', 'head 7, neck 2, front trunk 13, back trunk 13, buttocks 5, groin 1, upper arms 8, forearms 6');
set('share ', 'hands 5, thighs 19, lower legs 14, feet 7');
// Measured on open 3D models.
set('dress ', 'bare 0.92, clothed 1.2, armoured 1.35');
set(
  'build ',
  'true scale 1, heroic mild 1.12, heroic 1.26, heroic strong 1.47, stocky 1.6, broad 2.2, giant 2.9',
);
set('kit ', 'weapon 0.15, bow 0.27, small shield 0.3, round shield 0.55, large shield 0.85');
set('kit ', 'cloak 0.6, horse 3.6, barding 1.7, wings 1.2, tail 0.2, saddle 0.7');
set('surface ', 'beast 3.2, winged 0.47, serpent 0.25, engine 2.1, wall 1.8, house 3, hedge 1.1');
set('', 'wings 1, tail 0.1, saddle 0.2', ' of a creature');
// From memory: µm of wet film, share that ends on the figure, ml that palette, brush, cup or nozzle keep.
set('', 'brush 50, flood 100, drybrush 10, sponge 40, spread 800, airbrush 25, spray can 100', ' wet film');
set('', 'brush 0.5, flood 0.65, drybrush 0.15, sponge 0.5, spread 0.8, airbrush 0.35', ' transfer');
set('', 'brush 0.08, flood 0.1, drybrush 0.05, sponge 0.05, spread 0.2, airbrush 0.5', ' leftover');
set('spray can ', 'transfer 0.08, leftover 2');
// Two coats are common practice, the rest from memory: percent of the zone, coats, parts of water to one of paint.
set('', 'primer 100, base coat 100, midtone 60, wash 100, glaze 60, drybrush 30, highlight 15', ' area');
set('', 'edge highlight 5, detail 100, tidy-up 10, varnish 100, basing 100', ' area');
set('', 'base coat 2, glaze 2', ' coats');
set('', 'glaze 2', ' thin');
set(
  '',
  'relief 1.1, sculpt 1, relief closed 1.1, relief open frame 0.7, full target of a spray 18, most transfer of an airbrush 0.8, painter 1',
);
set('', 'usable share of a can 0.6, usable share of a pot 0.94');
set('', 'density 1.2, density of a wash 1, density in a can 0.8');
const methodOf = { primer: 'spray can', varnish: 'spray can', wash: 'flood', basing: 'spread' };
methodOf.drybrush = 'drybrush';
const names = Object.keys(likely);
const bodyParts = names.filter((name) => name.startsWith('share ')).map((name) => name.slice(6));
// From memory, percent of the part.
set('share ', 'face 50, hair 50, eyes 1, trousers 50, boots 50, belt 3');
const kitItems = names.filter((name) => name.startsWith('kit ')).map((name) => name.slice(4));

const notAssumptions = ['currency', 'date', 'locale', 'sure %', 'buy', 'again', 'restock'];
for (const { name, value } of rowsOf('settings')) {
  if (notAssumptions.includes(name)) continue;
  if (!(name in likely)) throw new Error(`a setting that this script does not know: ${name}`);
  const numbers = value.split('/');
  likely[name] = number(numbers.length === 3 ? numbers[1].trim() : value);
}
if (rowsOf('log').length > 0) throw new Error('this script does not read a log');

// --- Paints and other names of them ----------------------------------------------------------------------------
const paints = {};
const otherNames = {};
for (const row of [...rowsOf('paints'), ...rowsOf('pots')]) {
  paints[row.paint] ??= {};
  const paint = paints[row.paint];
  for (const column of ['kind', 'density g/ml', 'thin']) if (row[column]) paint[column] ??= row[column];
  for (const other of (row['also called'] ?? '').split(',')) if (other) otherNames[other.trim()] = row.paint;
}
const nameOf = (paint) => otherNames[paint] ?? paint;

// --- Areas of one figure in cm2 --------------------------------------------------------------------------------
const bodyAndKit = [...bodyParts, ...kitItems, 'hide', 'hull'];
const figures = {};
for (const row of rowsOf('figures')) {
  const parts = {};
  if (row['box mm']) {
    const [long, wide, high, ridge = high] = row['box mm'].split('x').map(Number);
    const roof = 2 * long * Math.hypot(wide / 2, ridge - high) + wide * (ridge - high);
    parts.hull =
      ((roof + 2 * long * high + 2 * wide * high) / 100) * likely[`relief ${row.build || 'closed'}`];
  } else if (row['long mm']) {
    const own = (number(row['long mm']) ** 2 / 100) * likely[`surface ${row.build}`];
    parts[['beast', 'winged', 'serpent'].includes(row.build) ? 'hide' : 'hull'] = own;
    for (const item of row.kit ? row.kit.split(',') : []) {
      const part = item.trim();
      parts[part] = (parts[part] ?? 0) + own * likely[`${part} of a creature`];
    }
  } else {
    // Du Bois & Du Bois 1916 at 170 cm and 70 kg: 18097.078 cm2; eyes at 0.936 of stature (Drillis & Contini 1966).
    const eye = number(row['eye mm']);
    const skin = 18097.078 * (eye / 1591.2) ** 2;
    const build = row.build || (eye >= 25 && eye <= 35 ? 'heroic' : 'true scale');
    const dress = row.dress || 'clothed';
    if (dress !== 'none')
      for (const part of bodyParts)
        parts[part] =
          skin *
          likely[`dress ${dress}`] *
          likely[`build ${build}`] *
          likely.relief *
          likely.sculpt *
          (likely[`share ${part}`] / 100);
    for (const item of row.kit ? row.kit.split(',') : []) {
      const part = item.trim();
      parts[part] = (parts[part] ?? 0) + skin * likely[`kit ${part}`] * likely.relief * likely.sculpt;
    }
  }
  let whole = 0;
  for (const part in parts) whole += parts[part];
  if (row['area cm2']) {
    for (const part in parts) parts[part] *= number(row['area cm2']) / whole;
    whole = number(row['area cm2']);
  }
  let withBase = whole;
  if (row.base) {
    const [a, b = a] = row.base.match(/[\d.]+/g).map(Number);
    const high = number(row['base high mm'], 3);
    const perBase = number(row['per base'], 1);
    let top = a * b;
    let round = 2 * (a + b);
    if (row.base.startsWith('round') || row.base.startsWith('oval')) {
      // Ramanujan 1914, first formula for the perimeter of an ellipse; exact for a circle.
      const p = a / 2;
      const q = b / 2;
      top = (Math.PI * a * b) / 4;
      round = Math.PI * (3 * (p + q) - Math.sqrt((3 * p + q) * (p + 3 * q)));
    }
    parts['base top'] = top / 100 / perBase;
    parts['base edge'] = (round * high) / 100 / perBase;
    withBase += parts['base top'] + parts['base edge'];
  }
  figures[row.figure] = { parts, withBase };
}

// --- Zones: part and percent of it -----------------------------------------------------------------------------
const readyMade = {
  whole: bodyAndKit.join(),
  base: 'base top, base edge',
  all: [...bodyAndKit, 'base top', 'base edge'].join(),
  skin: 'head, neck, hands, hide',
  face: `head ${likely['share face']}%`,
  hair: `head ${likely['share hair']}%`,
  eyes: `head ${likely['share eyes']}%`,
  torso: 'front trunk, back trunk, buttocks, groin',
  tunic: 'front trunk, back trunk, buttocks, groin, upper arms',
  sleeves: 'upper arms, forearms',
  trousers: `thighs, lower legs ${likely['share trousers']}%`,
  legs: 'thighs, lower legs',
  boots: `lower legs ${likely['share boots']}%, feet`,
  belt: `front trunk ${likely['share belt']}%, back trunk ${likely['share belt']}%`,
};
const ownZones = rowsOf('zones');

function zoneArea(zone, figure) {
  const forFigure = ownZones.find((row) => row.zone === zone && row.figure === figure);
  const forAny = ownZones.find((row) => row.zone === zone && row.figure === '');
  const list = (forFigure ?? forAny)?.parts ?? readyMade[zone] ?? zone;
  let area = 0;
  for (const item of list.split(/[,;]/)) {
    const [, part, percent = '100'] = /^(.*?)(?:\s+([\d.]+)%)?$/.exec(item.trim());
    area += (figures[figure].parts[part] ?? 0) * (Number(percent) / 100);
  }
  return area;
}

// --- Schemes: rows of the same step, zone and layer are one mix ------------------------------------------------
const schemes = {};
for (const row of rowsOf('schemes')) {
  schemes[row.scheme] ??= [];
  const steps = schemes[row.scheme];
  const same = steps.find((s) => s.step === row.step && s.zone === row.zone && s.layer === row.layer);
  const paint = { paint: nameOf(row.paint), share: number(row.share, 1) };
  if (same) same.paints.push(paint);
  else steps.push({ ...row, paints: [paint] });
}

// --- Demand: ml put out, per paint -----------------------------------------------------------------------------
const demand = {};
const entry = (paint) => {
  demand[paint] ??= { wholeMl: 0, needMl: 0, haveMl: 0, toBuyMl: 0 };
  return demand[paint];
};
const units = [];
for (const unit of rowsOf('army')) {
  const { withBase } = figures[unit.figure];
  units.push({ unit: unit.unit, areaCm2: withBase });
  const count = number(unit.count);
  const batch = number(unit.batch, 10);
  const scheme = schemes[unit.scheme || Object.keys(schemes)[0]];
  // A paint is put out once per step and batch, for all the zones that the step lays it on in one way.
  const zonesPerPalette = {};
  const palette = (step, paint) =>
    `${step.step} ${paint} ${step.method || (methodOf[step.layer] ?? 'brush')}`;
  for (const step of scheme) {
    if (zoneArea(step.zone, unit.figure) === 0) continue;
    for (const { paint } of step.paints) {
      zonesPerPalette[palette(step, paint)] = (zonesPerPalette[palette(step, paint)] ?? 0) + 1;
    }
  }
  for (const step of scheme) {
    const method = step.method || (methodOf[step.layer] ?? 'brush');
    const coats = number(step.coats, likely[`${step.layer} coats`] ?? 1);
    const areaShare = number(step['area %'], likely[`${step.layer} area`]) / 100;
    const area = zoneArea(step.zone, unit.figure);
    let transfer = likely[`${method} transfer`];
    if (method === 'airbrush' || method === 'spray can')
      transfer *= Math.min(2, Math.max(0.2, Math.sqrt(withBase / likely['full target of a spray'])));
    // Some mist passes the largest target; a transfer of the painter's own may lie above that.
    const most = likely['most transfer of an airbrush'];
    const own = likely[`${method} transfer`];
    transfer = Math.min(method === 'airbrush' ? Math.max(most, own) : 1, transfer);
    let shares = 0;
    for (const { share } of step.paints) shares += share;
    for (const { paint, share } of step.paints) {
      const thin = number(step.thin, number(paints[paint]?.thin, likely[`${step.layer} thin`] ?? 0));
      const sums = entry(paint);
      for (let done = 0; done < count && area > 0; done += batch) {
        const n = Math.min(batch, count - done);
        const film = likely[`${method} wet film`] / (1 + thin);
        const onFigures = n * area * areaShare * coats * film * 0.0001 * (share / shares);
        const leftover = likely[`${method} leftover`] / zonesPerPalette[palette(step, paint)];
        const putOut = (onFigures / transfer + leftover) * likely.painter;
        sums.wholeMl += putOut;
        if (Number(step.step) > number(unit.done, 0)) sums.needMl += putOut;
      }
    }
  }
}

// --- Stock: usable ml, ordered pots full -----------------------------------------------------------------------
for (const pot of rowsOf('pots')) {
  const paint = paints[pot.paint];
  const size = number(pot['size ml']);
  const sprays = paint.kind === 'primer' || paint.kind === 'varnish';
  const isCan = (pot.container || (sprays && size >= 150 ? 'can' : 'pot')) === 'can';
  const usualDensity = paint.kind === 'wash' ? likely['density of a wash'] : likely.density;
  const density = number(paint['density g/ml'], isCan ? likely['density in a can'] : usualDensity);
  const left = pot.left ?? '';
  let labelMl = size;
  if (left === 'empty') labelMl = 0;
  else if (left.endsWith('%')) labelMl = (size * number(left)) / 100;
  else if (left.endsWith('ml')) labelMl = Number.parseFloat(left);
  else if (left.endsWith('g')) labelMl = (Number.parseFloat(left) - number(pot['empty g'])) / density;
  if (pot.ordered === 'yes') labelMl = size;
  entry(nameOf(pot.paint)).haveMl += labelMl * likely[`usable share of a ${isCan ? 'can' : 'pot'}`];
}
for (const paint in demand) demand[paint].toBuyMl = Math.max(0, demand[paint].needMl - demand[paint].haveMl);

process.stdout.write(`${JSON.stringify({ paints: demand, units }, null, 2)}\n`);
