import { describe, expect, it } from 'vitest';
import { planSchema } from '../../../src/report/plan-json/plan-document.js';
import { planVersion } from '../../../src/report/plan-json/plan-version.js';
import { writePlanSchema } from '../../../src/report/plan-json/write-plan-schema.js';
import { exampleDescription, textOf } from './plan-example.js';

interface JsonSchema {
  readonly description?: string;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly items?: JsonSchema;
  readonly anyOf?: readonly JsonSchema[];
  readonly additionalProperties?: unknown;
}

/** Every named field of a schema with its path. */
function fieldsOf(schema: JsonSchema, path = ''): { path: string; field: JsonSchema }[] {
  const own = Object.entries(schema.properties ?? {}).flatMap(([key, field]) => [
    { path: `${path}.${key}`, field },
    ...fieldsOf(field, `${path}.${key}`),
  ]);
  const inner = [...(schema.items === undefined ? [] : [schema.items]), ...(schema.anyOf ?? [])];
  return [...own, ...inner.flatMap((one) => fieldsOf(one, `${path}[]`))];
}

describe('the schema of plan.json', () => {
  it('stands in reports/plan.schema.json as generated (npm run schema renews it)', async () => {
    await expect(writePlanSchema()).toMatchFileSnapshot('../../../reports/plan.schema.json');
  });

  it('describes every field', () => {
    const fields = fieldsOf(JSON.parse(writePlanSchema()));
    expect(fields.length).toBeGreaterThan(120);
    const described = ({ field }: { field: JsonSchema }) =>
      field.description !== undefined || field.anyOf?.some((one) => one.description !== undefined);
    expect(fields.filter((one) => !described(one)).map(({ path }) => path)).toEqual([]);
  });

  it('lets later versions add keys', () => {
    expect(writePlanSchema()).not.toContain('"additionalProperties": false');
  });

  it('fits a plan by the real stages, and knows each of its keys', () => {
    const document = JSON.parse(textOf(exampleDescription));
    expect(planSchema.parse(document)).toEqual(document);
    expect(document.version).toBe(planVersion);
  });

  it.each([
    ['money as a number', { costs: { use: 1.5 } }],
    ['a cost of use with too few digits', { costs: { use: '1.5' } }],
    ['another version', { version: 1 }],
    ['an unknown state', { paints: [{ state: 'plenty' }] }],
    ['no promise', { promise: undefined }],
    ['no order', { order: undefined }],
  ])('refuses %s', (_, change: Record<string, unknown>) => {
    const document = JSON.parse(textOf(exampleDescription));
    for (const [key, value] of Object.entries(change)) {
      if (Array.isArray(value)) document[key][0] = { ...document[key][0], ...value[0] };
      else document[key] = typeof value === 'object' ? { ...document[key], ...value } : value;
    }
    expect(planSchema.safeParse(document).success).toBe(false);
  });
});
