// Sheets: headers compared as painters write them. In: a header or a name. Out: its key for comparing.

/**
 * Two headers are the same when their keys are: case, spaces, underscores and hyphens do not count, and
 * `cm²` is `cm2`. `Size_ML` and `size ml` both give `sizeml`; a blank header gives ''.
 */
export function headerKey(header: string): string {
  return header
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s_-]+/g, '');
}
