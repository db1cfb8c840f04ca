// Export: what every workbook says. In: what a spreadsheet program fills in. Out: text.

export const workbookWords = { page: (page: string, of: string): string => `Page ${page} of ${of}` };
