export function escapeLetters(source: string, name: string): string;
