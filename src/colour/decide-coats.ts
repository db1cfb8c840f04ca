// Colour: coats where the sheet leaves them blank. In: schemes, measured figures, colours. Out: coats, each with its why.
import { likely } from '../assumptions/look-up.js';
import type { CoatChoice, CoatChoices } from '../model/colour.js';
import { pairUnits } from '../model/pair-units.js';
import type { Scheme, Sheets, Step } from '../model/sheets.js';
import type { FigureArea } from '../model/work.js';
import { partsOfZone, shareOf } from '../model/zones.js';
import { chooseCoats, type Desk, makeDesk, type Under } from './choose-coats.js';
import { isCovering, isLeftBlank, type Palette } from './cover-beneath.js';
import { type Beneath, bareGround, layCoat } from './track-beneath.js';

/** What the choice is made with besides the sheets. */
export interface Sight extends Omit<Palette, 'paints'> {
  /** Every figure of the army, measured. */
  readonly areas: ReadonlyMap<string, Pick<FigureArea, 'parts'>>;
}

/**
 * Coats for every base coat and midtone that leaves them blank, on each figure that the army paints in the scheme: the
 * least number that hides what lies beneath, on the worst part of the zone. Where a colour on top or beneath is not
 * known, or an opacity, there is no choice and the layer's default stands; so an army without hex gives an empty map.
 */
export function decideCoats(sheets: Sheets, { areas, ...sight }: Sight): CoatChoices {
  const desk = makeDesk(sheets, sight);
  const choices = new Map<Step, Map<string, CoatChoice>>();
  for (const { figure, scheme } of pairUnits(sheets.army)) {
    const [area, found] = [areas.get(figure), sheets.schemes.get(scheme)];
    if (area === undefined || found === undefined) continue;
    for (const [step, choice] of decideScheme(found, { figure, area, zones: sheets.zones, desk })) {
      choices.set(step, (choices.get(step) ?? new Map<string, CoatChoice>()).set(figure, choice));
    }
  }
  return choices;
}

interface OneFigure {
  readonly figure: string;
  readonly area: Pick<FigureArea, 'parts'>;
  readonly zones: Sheets['zones'];
  readonly desk: Desk;
}

function decideScheme({ steps }: Scheme, { figure, area, zones, desk }: OneFigure): [Step, CoatChoice][] {
  const ground = bareGround(area.parts.keys());
  return steps.flatMap((step): [Step, CoatChoice][] => {
    if (!isCovering(step, desk)) return [];
    const percentOf = (name: string): number => likely(desk.assumptions, name);
    const areaShare = step.areaShare ?? percentOf(`${step.layer} area`) / 100;
    const parts = partsOfZone(step.zone, figure, zones).map((one) => ({
      part: one.part,
      share: shareOf(one, percentOf),
    }));
    const beneath = layCoat(ground, { step, parts, areaShare });
    if (!isLeftBlank(step, desk)) return [];
    const choice = chooseCoats(step, sumByMix(beneath, area), desk);
    return choice === undefined ? [] : [[step, choice]];
  });
}

/** What a coat lies on, alike colours together. */
function sumByMix(beneath: readonly Beneath[], { parts }: Pick<FigureArea, 'parts'>): Under[] {
  const sums = new Map<string, Under>();
  for (const { part, share, coat } of beneath) {
    const key = (coat?.paints ?? []).map((one) => `${one.paint}\n${one.share}`).join('\n');
    const areaCm2 = (sums.get(key)?.areaCm2 ?? 0) + (parts.get(part) ?? 0) * share;
    sums.set(key, { mix: coat?.paints, areaCm2 });
  }
  return [...sums.values()];
}
