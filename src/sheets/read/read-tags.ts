// Readers: single tags of a workbook's small XML parts. In: XML. Out: tags, attributes.

/** Opening tags of that name, with or without a prefix; a `>` may stand in an attribute. */
export function tags(xml: string, name: string): string[] {
  const attributes = `(?:\\s+[\\w:.-]+\\s*=\\s*(?:"[^"]*"|'[^']*'))*`;
  return xml.match(new RegExp(`<(?:\\w+:)?${name}${attributes}\\s*/?>`, 'g')) ?? [];
}

/**
 * The decoded value of an attribute, whose name may be a pattern such as `\\w+:id`; undefined where there is
 * none.
 */
export function attribute(tag: string, name: string): string | undefined {
  const [, double, single] = new RegExp(`\\s${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(tag) ?? [];
  const raw = double ?? single;
  return raw === undefined ? undefined : decodeEntities(raw);
}

const entities: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

function decodeEntities(text: string): string {
  return text.replace(
    /&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi,
    (whole, hex?: string, decimal?: string, name?: string) => {
      if (hex !== undefined) return String.fromCodePoint(Number.parseInt(hex, 16));
      if (decimal !== undefined) return String.fromCodePoint(Number(decimal));
      return entities[name ?? ''] ?? whole;
    },
  );
}
