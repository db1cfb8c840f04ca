// Estimate: a treatment on a whole job. In: a treatment, figures, batch. Out: a Line in ml with its doubt.
import type { Line } from '../model/work.js';
import { countSittings, putOutMl } from './estimate-film.js';
import type { Treatment } from './treat-figure.js';

/** How many figures, and how many at a sitting. */
interface JobSize {
  readonly count: number;
  readonly batch: number;
}

/** Paint for one treatment of so many figures. */
export function estimateLine(treatment: Treatment, painterSpread: number, size: JobSize): Line {
  const sittings = countSittings(size.count, size.batch);
  const onFigure = treatment.onFigureMl * size.count;
  const putOut = putOutMl(onFigure, { ...treatment, sittings });
  const leftoverMl = treatment.leftoverMl * sittings;
  return {
    figures: size.count,
    step: treatment.step.step,
    zone: treatment.step.zone,
    layer: treatment.step.layer,
    method: treatment.method,
    paint: treatment.paint,
    areaCm2: treatment.areaCm2,
    surface: treatment.surface,
    areaShare: treatment.areaShare,
    coats: treatment.coats,
    ...(treatment.coatsBecause === undefined ? {} : { coatsBecause: treatment.coatsBecause }),
    thin: treatment.thin,
    mixShare: treatment.mixShare,
    sittings,
    onFigureMl: onFigure,
    leftoverMl,
    putOutMl: putOut,
    mark: treatment.mark,
    biggestDoubt: findDoubt(treatment, painterSpread, (leftoverMl * treatment.painter) / putOut),
  };
}

/**
 * The factor that moves the paint put out most. Area, film and transfer act on what goes to the figure, the
 * leftover on the rest, the painter on all: each factor's log spread counts by the share it acts on.
 */
function findDoubt(treatment: Treatment, painterSpread: number, leftoverShare: number): string {
  let name = painterSpread > 0 ? 'painter' : '';
  let most = painterSpread;
  const weigh = (candidate: string, spread: number): void => {
    if (spread > most) [name, most] = [candidate, spread];
  };
  for (const [candidate, spread] of treatment.doubts) weigh(candidate, spread * (1 - leftoverShare));
  weigh(`${treatment.method} leftover`, treatment.leftoverSpread * leftoverShare);
  return name;
}
