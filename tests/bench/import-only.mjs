// Bench: loads the libraries that `plan` loads and does nothing with them.
import 'commander';
import 'culori/require';
import 'decimal.js';
import 'exceljs';
import 'fastest-levenshtein';
import 'handlebars';
import 'highs';
import 'papaparse';
import 'pure-rand/generator/xoroshiro128plus';
import 'zod';
