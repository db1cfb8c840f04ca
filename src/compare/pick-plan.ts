// Comparing: what of a plan.json is compared. In: its text, or a value as JSON gave it. Out: those parts, or why it is none to compare.
import type { Sheets } from '../model/sheets.js';
import type { PlanDocument } from '../report/plan-json/plan-document.js';
import { planVersion } from '../report/plan-json/plan-version.js';

/** What comparing looks at; all of it is checked, since anyone may have written the file. */
export type ComparedPlan = Pick<
  PlanDocument,
  | 'date'
  | 'currency'
  | 'settings'
  | 'learned'
  | 'army'
  | 'costs'
  | 'units'
  | 'jobs'
  | 'work'
  | 'figures'
  | 'paints'
  | 'order'
  | 'choices'
  | 'time'
  | 'assumptions'
>;

/** With the market of its sheets, which plan.json does not list; undefined where only plan.json is there. */
export interface Compared extends ComparedPlan {
  readonly market?: Pick<Sheets, 'offers' | 'shops'> | undefined;
}

type PlanFault = 'older' | 'newer' | 'damaged';

type Shape = keyof typeof kinds | readonly [Shape] | { readonly [key: string]: Shape };

const isLocale = (text: string): boolean => {
  try {
    return Intl.getCanonicalLocales(text).length === 1;
  } catch {
    return false;
  }
};

const kinds = {
  text: (value: unknown) => typeof value === 'string',
  number: (value: unknown) => typeof value === 'number',
  yesNo: (value: unknown) => typeof value === 'boolean',
  sum: (value: unknown) => typeof value === 'string' && /^-?\d+(\.\d+)?$/.test(value),
  currency: (value: unknown) => typeof value === 'string' && /^[A-Z]{3}$/.test(value),
  locale: (value: unknown) => typeof value === 'string' && isLocale(value),
};

const shape: Shape = {
  date: 'text',
  currency: 'currency',
  settings: { locale: 'locale', restock: 'text' },
  learned: { weighings: [{}] },
  army: { figures: 'number' },
  costs: { use: 'sum', useAtLeast: 'yesNo', cash: 'sum' },
  units: [{ unit: 'text', job: 'number' }],
  jobs: [
    {
      ...{
        figure: 'text',
        scheme: 'text',
        count: 'number',
        batch: 'number',
        done: 'number',
        units: 'number',
      },
      lines: [
        {
          ...{
            step: 'number',
            figures: 'number',
            zone: 'text',
            layer: 'text',
            method: 'text',
            paint: 'text',
          },
          ...{ areaShare: 'number', coats: 'number', thin: 'number', mixShare: 'number' },
        },
      ],
    },
  ],
  work: { paints: [{ paint: 'text', putOutRemainingMl: 'number' }] },
  figures: [{ figure: 'text', withBaseCm2: 'number' }],
  paints: [{ paint: 'text', haveMl: 'number', state: 'text', needMl: { likely: 'number' }, pots: [{}] }],
  order: { policy: 'text' },
  choices: [{ policy: 'text', meanInAll: 'sum', atLeast: 'yesNo' }],
  time: { evenings: 'number' },
  assumptions: [{ name: 'text', mark: 'text', low: 'number', likely: 'number', high: 'number' }],
};

/** The text of a plan.json; what is no JSON is damaged. */
export function readPlan(text: string): ReturnType<typeof pickPlan> {
  try {
    return pickPlan(JSON.parse(text));
  } catch {
    return 'damaged';
  }
}

/** Only plans of this very version, since an older one may mean something else by a key. */
export function pickPlan(value: unknown): ComparedPlan | PlanFault {
  if (!isObject(value) || typeof value.version !== 'number') return 'damaged';
  if (value.version !== planVersion) return value.version < planVersion ? 'older' : 'newer';
  return isPlan(value) ? value : 'damaged';
}

const isPlan = (value: unknown): value is ComparedPlan => fits(value, shape);

function fits(value: unknown, of: Shape): boolean {
  if (typeof of === 'string') return kinds[of](value);
  if (isList(of)) return Array.isArray(value) && value.every((one) => fits(one, of[0]));
  return isObject(value) && Object.entries(of).every(([key, part]) => fits(value[key], part));
}

const isList = (of: Shape): of is readonly [Shape] => Array.isArray(of);

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
