// Checks: values of the settings sheet. In: a cell. Out: a currency, a locale, a percentage; or a mistake.
import { type CellKind, Mistake, type Written } from './cell-kind.js';
import { parseMeasure } from './parse-number.js';

/** An ISO 4217 code in upper case. */
function readCurrency(cell: Written): string | Mistake {
  const code = String(cell).toUpperCase();
  return Intl.supportedValuesOf('currency').includes(code) ? code : new Mistake('not-a-currency');
}

/**
 * A BCP 47 tag of a language that Unicode's CLDR knows a script for; `de_AT` is taken for `de-AT`. Asking Intl for its
 * supported locales would say the same and takes ten milliseconds; the script takes two, so that of English is not asked for.
 */
function readLocale(cell: Written): string | Mistake {
  try {
    const locale = new Intl.Locale(String(cell).replaceAll('_', '-'));
    if (locale.language === 'en') return locale.toString();
    const { script } = new Intl.Locale(locale.language).maximize();
    return script === undefined ? new Mistake('not-a-locale') : locale.toString();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return new Mistake('not-a-locale');
  }
}

/** 50 to 99; `90` and `90%` are the same. */
function readSurePercent(cell: Written): number | Mistake {
  const value = parseMeasure(cell, '%');
  if (value === undefined) return new Mistake('not-a-number', '80');
  if (value instanceof Mistake) return value;
  if (value < 50) return new Mistake('too-little', 'an even chance, 50 %');
  return value > 99 ? new Mistake('too-much', 'can be promised, 99 %') : value;
}

export const currencyKind: CellKind<string> = { noun: 'a currency', read: readCurrency };
export const localeKind: CellKind<string> = { noun: 'a language tag', read: readLocale };
export const surePercentKind: CellKind<number> = { noun: 'a percentage', read: readSurePercent };
