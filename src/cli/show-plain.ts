// Command line: text of a sheet made safe for a terminal. In: any text. Out: the same on one line, with nothing in it
// that moves the cursor, sets colours or turns the writing round.

/** Controls, line and paragraph separators, and the marks that turn the direction of writing (UAX #9). */
const unseen = /[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/gu;

/** `a<ESC>[31mb` becomes `a\u001b[31mb`, spelled out. */
export function showPlain(text: string): string {
  return text.replace(unseen, (one) => `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
