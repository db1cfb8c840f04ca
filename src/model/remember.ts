// Model: what is worked out once. In: how it is worked out, what the askings are told apart by. Out: the same, from memory where it
// was asked before.

/** `make`, called once for all that have one key: that which is asked, unless told otherwise. */
export function remember<Asked, Value extends NonNullable<unknown>>(
  make: (asked: Asked) => Value,
  keyOf: (asked: Asked) => unknown = (asked) => asked,
): (asked: Asked) => Value {
  const made = new Map<unknown, Value>();
  return (asked) => {
    const key = keyOf(asked);
    const value = made.get(key) ?? make(asked);
    made.set(key, value);
    return value;
  };
}
