// Build: JavaScript in ASCII alone. In: a source. Out: the same program, its other letters as escapes: V8 keeps a source of one
// byte a letter, which is read and compiled sooner than one of two.

/** A raw template would show the escape, and a letter behind a backslash would become two. */
const unsafe = /\\[^\0-\x7f]|\braw`[^`]*[^\0-\x7f]/;

/** ECMAScript 12.7.1 and 12.9: in names, strings, templates and patterns an escape means its letter. Throws where it would not. */
export function escapeLetters(source, name) {
  const found = unsafe.exec(source);
  if (found !== null) throw new Error(`${name}: "${found[0]}" cannot be escaped`);
  return source.replace(
    /[^\0-\x7f]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
