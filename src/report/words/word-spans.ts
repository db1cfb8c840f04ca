// Report words: steps as one types them. In: numbers in rising order, each once or more often. Out: text.

/** `2-5,8` */
export function wordSpans(numbers: readonly number[]): string {
  const spans: [number, number][] = [];
  for (const number of numbers) {
    const last = spans.at(-1);
    if (last !== undefined && number <= last[1] + 1) last[1] = Math.max(last[1], number);
    else spans.push([number, number]);
  }
  return spans.map(([from, to]) => (from === to ? `${from}` : `${from}-${to}`)).join(',');
}
