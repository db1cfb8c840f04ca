// Checks: values of which some are not known. In: an object. Out: the same without what is undefined.

type Known<T> = { readonly [K in keyof T]?: Exclude<T[K], undefined> };

/** Keys stay in their order; what is false or 0 is known. */
export function whatIsKnown<T extends object>(values: T): Known<T> {
  const known: Partial<T> = {};
  for (const key in values) if (values[key] !== undefined) known[key] = values[key];
  return known as Known<T>;
}
