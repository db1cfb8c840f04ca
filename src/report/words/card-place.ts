// Words: where a card of bench.html stands, for links and their targets. In: its number, a step. Out: ids of an element.

/** `c3` */
export const cardPlace = (no: number): string => `c${no}`;

/** `c3-9`: that step on it. */
export const stepPlace = (no: number, step: number): string => `${cardPlace(no)}-${step}`;
