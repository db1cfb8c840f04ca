// A model file measured, and the sums that tests ask for.
import { type MeasuredModel, reachedOf } from '../../src/model/measured.js';
import { measureSurface } from '../../src/surface/measure-surface.js';
import { readModel } from '../../src/surface/read-model.js';
import { doubledArea } from '../../src/surface/triangle-store.js';

export async function measureModel(bytes: Uint8Array, ending: string): Promise<MeasuredModel> {
  return measureSurface(await readModel(bytes, ending), ending === '.obj');
}

/** The area of all triangles of a file, unmeasured. */
export async function areaOfFile(bytes: Uint8Array, ending: string): Promise<number> {
  const { corners } = (await readModel(bytes, ending)).mesh;
  let sum = 0;
  for (let at = 0; at < corners.length; at += 9) sum += doubledArea(corners, at) / 2;
  return sum;
}

/** Of one side of every triangle. */
export const wholeOf = ({ pieces }: MeasuredModel): number => pieces.reduce((sum, { area }) => sum + area, 0);

/** Where a twentieth of the sky is free. */
export const reached = ({ pieces }: MeasuredModel): number => reachedOf(pieces, 5).area;
