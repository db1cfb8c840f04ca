// Export: the JSON Schema of plan.json. In: nothing. Out: the text of reports/plan.schema.json.
import { z } from 'zod';
import { planSchema } from './plan-document.js';

/**
 * The published schema (JSON Schema 2020-12), every field with its meaning. Unknown keys are allowed, since later
 * versions add some.
 */
export function writePlanSchema(): string {
  const { $schema, ...schema } = z.toJSONSchema(planSchema, { io: 'input' });
  return `${JSON.stringify({ $schema, title: 'plan.json of Halfpot', ...schema }, null, 2)}\n`;
}
