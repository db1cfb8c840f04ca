// Report view: fields that plan.json uses over and over. In: what a field means. Out: its schema, so described.
import { z } from 'zod';
import { marks } from '../../model/assumption.js';
import { containers, layers } from '../../model/words.js';

export const text = (says: string) => z.string().describe(says);
export const whole = (says: string) => z.int().min(0).describe(says);
export const number = (says: string) => z.number().describe(says);
export const yesNo = (says: string) => z.boolean().describe(says);
export const ml = (says: string) => z.number().min(0).describe(`${says} Millilitres of usable paint.`);
export const cm2 = (says: string) => z.number().min(0).describe(`${says} Square centimetres.`);
export const share = (says: string) => z.number().min(0).max(1).describe(`${says} From 0 to 1.`);
export const list = <Item extends z.ZodType>(item: Item, says: string) => z.array(item).describe(says);
/** What it says comes first, so that the fields stand last: an object, and a list of such. */
export const group = <Fields extends z.ZodRawShape>(says: string, fields: Fields) =>
  z.object(fields).describe(says);
export const rows = <Fields extends z.ZodRawShape>(says: string, fields: Fields) =>
  z.array(z.object(fields)).describe(says);

export const cash = (says: string) =>
  z
    .string()
    .regex(/^-?\d+(\.\d+)?$/)
    .describe(`${says} Decimal, as many digits as the currency's minor unit has.`);
export const cost = (says: string) =>
  z
    .string()
    .regex(/^-?\d+\.\d{6}$/)
    .describe(`${says} Decimal with six digits, rounded half up.`);

export const mark = z
  .enum(marks)
  .describe('Where the number comes from: the weakest among its inputs, strongest first in this list.');
export const biggestDoubt = text(
  'The assumption that causes most of the doubt; blank where every input is exact.',
);
export const atLeast = yesNo(
  'True where something in the cost of use has no price: the true cost is higher.',
);
export const date = z.string().regex(/^\d{4}-\d\d-\d\d$/);
export const layer = z.enum(layers).describe('What goes on.');
export const container = z.enum(containers).describe('What holds the paint.');
