// Sample: it stays an army on which every part of a plan can be seen.
import { describe, expect, it } from 'vitest';
import { planArmy } from '../../src/plan-army.js';
import { readSample, today } from './read-sample.js';

const { sheets } = await readSample('folder');
const plan = await planArmy(sheets, today);
const steps = [...sheets.schemes.values()].flatMap((scheme) => scheme.steps);
const figures = [...sheets.figures.values()];
const kindOf = (paint: string) => sheets.paints.get(paint)?.kind;
const stateOf = (paint: string) => plan.stock.find((stock) => stock.paint === paint)?.state;

describe('the sample army', () => {
  it('is of some size: a hundred figures in four units or more', () => {
    expect(plan.figureCount).toBeGreaterThanOrEqual(100);
    expect(sheets.army.length).toBeGreaterThanOrEqual(4);
  });

  it('holds riders, an engine and figures of an area of their own', () => {
    expect(figures.some(({ kit }) => kit.some(({ item }) => item === 'horse'))).toBe(true);
    expect(figures.some(({ boxMm }) => boxMm !== undefined)).toBe(true);
    expect(figures.some(({ areaCm2 }) => areaCm2 !== undefined)).toBe(true);
    expect(figures.some(({ perBase }) => perBase > 1)).toBe(true);
  });

  it('is sprayed, washed, drybrushed, edged, varnished and based', () => {
    const has = (layer: string, method?: string) =>
      [...plan.estimate.jobs.keys()].some(({ lines }) =>
        lines.some((line) => line.layer === layer && (method === undefined || line.method === method)),
      );
    expect(has('primer', 'spray can')).toBe(true);
    expect(has('varnish', 'spray can')).toBe(true);
    expect(has('basing', 'spread')).toBe(true);
    for (const layer of ['wash', 'glaze', 'drybrush', 'edge highlight']) expect(has(layer), layer).toBe(true);
    expect(steps.some(({ paints }) => paints.length > 1)).toBe(true);
    expect(steps.some(({ paints }) => kindOf(paints[0]?.paint ?? '') === 'wash')).toBe(true);
  });

  it('has a shelf with half-used, weighed and ordered pots', () => {
    expect(new Set(sheets.pots.map(({ left }) => left.how))).toEqual(new Set(['by eye', 'in ml', 'weighed']));
    expect(sheets.pots.some(({ ordered }) => ordered)).toBe(true);
    expect(plan.costs.unpriced).toContain('Lantern glow');
  });

  it('shows every state, a low pot that the army does not use, and a need that no shop meets', () => {
    expect(new Set(plan.stock.filter(({ needMl }) => needMl > 0).map(({ state }) => state))).toEqual(
      new Set(['none owned', 'short', 'tight', 'enough']),
    );
    expect(stateOf('Moorhen red')).toBe('none owned');
    expect(plan.stock.some(({ needMl, runningLow }) => needMl === 0 && runningLow)).toBe(true);
    expect(plan.order.unmet.map(({ paint }) => paint)).toEqual(['Duckweed green']);
  });

  it('can buy in two shops that ask postage, one of them with a set on offer', () => {
    expect([...sheets.shops.values()].filter(({ postageMinor }) => postageMinor > 0)).toHaveLength(2);
    expect(sheets.offers.some(({ pots }) => pots.length > 1)).toBe(true);
    const shops = plan.choices.map(({ lines }) => new Set(lines.map(({ shop }) => shop)).size);
    expect(new Set(shops)).toEqual(new Set([0, 1, 2]));
  });

  it('has a log that teaches, a substitute for what no shop sells, an undercoat worth its coat and a choice of primers', () => {
    expect(plan.learned.weighings.length).toBeGreaterThanOrEqual(3);
    expect(plan.assumptions.filter(({ mark }) => mark === 'weighed').length).toBeGreaterThan(0);
    expect(plan.instead.find(({ paint }) => paint === 'Duckweed green')?.by.length).toBeGreaterThan(0);
    expect(plan.undercoats.length).toBeGreaterThan(0);
    expect(plan.primers.best).not.toEqual([]);
    const cash = plan.frontier.points.map(({ cashMinor }) => cashMinor);
    expect(new Set(cash).size).toBeGreaterThan(2);
  });

  it('leaves no part of a figure unpainted', () => {
    expect([...plan.estimate.jobs.keys()].flatMap(({ notPainted }) => notPainted)).toEqual([]);
  });

  // GS1 General Specifications, prefixes 02 and 20 to 29: numbers for use within a company, never a product on sale.
  it('carries only codes that no real product can have', () => {
    const codes = [...sheets.pots, ...sheets.offers.flatMap(({ pots }) => pots)].flatMap(
      ({ code }) => code ?? [],
    );
    expect(codes.length).toBeGreaterThan(20);
    for (const code of codes) expect(code).toMatch(/^(02|2\d)\d{11}$/);
  });
});
