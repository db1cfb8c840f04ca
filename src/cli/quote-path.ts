// Command line: a path as a shell wants it typed. In: a path. Out: text.

export const quoted = (path: string): string => (/\s/.test(path) ? `"${path}"` : path);
