// Unpacking: text of an XML part as it is meant. In: text between tags or quotes. Out: the same decoded.

const named: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };
const HIGHEST = 0x10ffff;

/** Entities decoded. No document type may stand in these parts (ECMA-376 part 2, 8.2.5), so a name of its own stays as it is. */
export function decodeEntities(text: string): string {
  if (!text.includes('&')) return text;
  return text.replace(
    /&(?:#x([\da-f]{1,8})|#(\d{1,8})|(lt|gt|amp|quot|apos));/gi,
    (whole, hex, decimal, name) => {
      if (typeof name === 'string') return named[name] ?? whole;
      const code = typeof hex === 'string' ? Number.parseInt(hex, 16) : Number(decimal);
      return code <= HIGHEST ? String.fromCodePoint(code) : whole;
    },
  );
}

/** ECMA-376 22.9.2.19: in a cell's text `_x000D_` stands for the character of that number. */
export function decodeCellText(text: string): string {
  const decoded = decodeEntities(text);
  if (!decoded.includes('_x')) return decoded;
  return decoded.replace(/_x([\da-f]{4})_/gi, (_, hex: string) =>
    String.fromCharCode(Number.parseInt(hex, 16)),
  );
}
