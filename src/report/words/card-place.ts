// Words: where a card of bench.html stands, for links and their targets. In: its number, a step. Out: ids of an element.

/** `card-3` */
export const cardPlace = (no: number): string => `card-${no}`;

/** `card-3-step-9`: that step on it. */
export const stepPlace = (no: number, step: number): string => `${cardPlace(no)}-step-${step}`;
