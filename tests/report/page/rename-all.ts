// Puts a text into every name that a painter may choose. In: a plan or any part of it, the text. Out: a changed copy.
import type { Plan } from '../../../src/model/plan.js';

/** Fields that hold a painter's own words, wherever they stand. */
const named = new Set([
  'paint',
  'zone',
  'unit',
  'figure',
  'scheme',
  'shop',
  'offer',
  'code',
  'place',
  'meaning',
  'by',
  'undercoat',
  'best',
]);
const lists = new Set(['unpriced', 'because', 'zones']);

/**
 * Every name gets `text` behind it; names stay different from one another, and alike where they were alike. What is one
 * object in two places, such as the job of two units, stays one.
 */
export function renameAll(plan: Plan, text: string): Plan {
  const names = new Set<string>();
  collect(plan, '', names);
  return change(plan, '', { text, names, made: new Map() }) as Plan;
}

interface Renaming {
  readonly text: string;
  readonly names: ReadonlySet<string>;
  /** Changed objects by what they were. */
  readonly made: Map<object, unknown>;
}

const isName = (key: string): boolean => named.has(key) || lists.has(key);

function collect(value: unknown, key: string, names: Set<string>): void {
  if (typeof value === 'string' && isName(key)) names.add(value);
  else if (Array.isArray(value)) for (const one of value) collect(one, key, names);
  else if (value instanceof Map) for (const one of value.values()) collect(one, '', names);
  else if (isPlain(value)) for (const [field, one] of Object.entries(value)) collect(one, field, names);
}

/** Doubts and remedies name assumptions and methods too, which keep their names. */
const isReading = (key: string, text: string): boolean => key === 'name' && text.startsWith('reading of ');

function change(value: unknown, key: string, renaming: Renaming): unknown {
  if (typeof value === 'string' && (isReading(key, value) || key === 'what')) return rename(value, renaming);
  if (typeof value === 'string') return isName(key) ? value + renaming.text : value;
  if (Array.isArray(value)) return value.map((one) => change(one, key, renaming));
  if (value instanceof Map) {
    const entries = [...value].map(
      ([name, one]) => [changeKey(name, renaming), change(one, '', renaming)] as const,
    );
    return new Map(entries);
  }
  if (!isPlain(value)) return value;
  const made = renaming.made.get(value) ?? {};
  if (renaming.made.has(value)) return made;
  renaming.made.set(value, made);
  for (const [field, one] of Object.entries(value)) Reflect.set(made, field, change(one, field, renaming));
  return made;
}

const changeKey = (key: unknown, renaming: Renaming): unknown =>
  typeof key === 'string' ? rename(key, renaming) : change(key, '', renaming);

const rename = (name: unknown, { names, text }: Renaming): unknown =>
  typeof name === 'string' && names.has(name.replace(/^reading of /, '')) ? name + text : name;

/** Plain objects only: exact amounts are left alone. */
const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;
