// Architecture: which folder may import which, where files may be touched, where each library lives.
// Every rule has a deliberately bad tree in tests/architecture/fixtures/<name of the rule>.

const stages = ['estimate', 'ranges', 'stock', 'order', 'cost', 'colour', 'time', 'summary'];

/** A folder of src (or one file) and all that it may import beside itself. */
const edges = [
  {
    name: 'model-imports-nothing',
    from: '^src/model/',
    allowed: ['^src/model/'],
    comment:
      'The model is what every stage agrees on and knows no stage. Move what the type needs into src/model, ' +
      'or move the function to the stage that uses it.',
  },
  {
    name: 'problems-import-model',
    from: '^src/problems/',
    allowed: ['^src/problems/', '^src/model/'],
    comment: 'Wording knows only the problem as data. Put what the words need into found, expected or hint.',
  },
  {
    name: 'unpack-imports-nothing',
    from: '^src/unpack/',
    allowed: ['^src/unpack/'],
    comment:
      'Zip and XML know nothing of what is packed in them. Put what is to be read of a part into the reader that asks for it.',
  },
  {
    name: 'surface-imports-model-and-unpack',
    from: '^src/surface/',
    allowed: ['^src/surface/', '^src/unpack/', '^src/model/'],
    comment:
      'The surface of a model is geometry: bytes in, areas and free sky out. Files, threads and what is kept belong to ' +
      'src/sheets/read, problems to whoever asked, values to the stage that uses what was measured.',
  },
  {
    name: 'sheets-import-model-and-problems',
    from: '^src/sheets/',
    allowed: ['^src/sheets/', '^src/surface/', '^src/unpack/', '^src/model/', '^src/problems/'],
    comment:
      'Reading and checking sheets comes before any estimate. Take what you need (the registry, the date) ' +
      'as an argument; src/cli hands it over.',
  },
  {
    name: 'assumptions-import-model',
    from: '^src/assumptions/',
    allowed: ['^src/assumptions/', '^src/model/'],
    comment:
      'The registry holds values and sources, no reckoning. Move the reckoning to the stage that does it.',
  },
  ...stages.map((stage) => ({
    name: `${stage}-imports-model-and-assumptions`,
    from: `^src/${stage}/`,
    allowed: [`^src/${stage}/`, '^src/model/', '^src/assumptions/'],
    comment:
      'Stages never import one another. Put what both share into src/model, and let src/plan-army.ts hand ' +
      "one stage's result to the next.",
  })),
  {
    name: 'solver-knows-no-paint',
    from: '^src/order/solver/',
    allowed: ['^src/order/solver/', '^src/model/at\\.ts$'],
    comment:
      'The integer program is plain numbers. Translate pots and offers to columns and rows in src/order, ' +
      'outside the solver folder.',
  },
  {
    name: 'plan-army-imports-stages',
    from: '^src/plan-army\\.ts$',
    allowed: ['^src/model/', '^src/assumptions/', ...stages.map((stage) => `^src/${stage}/`)],
    comment:
      'plan-army.ts is the list of stages in order: sheets come in as an argument, the plan goes out as data. ' +
      'Reading belongs to src/sheets, drawing to src/report, flags to src/cli.',
  },
  {
    name: 'words-import-model-and-problems',
    from: '^src/report/words/',
    allowed: ['^src/report/words/', '^src/model/', '^src/problems/'],
    comment:
      'Words for numbers, marks and doubt know no section. Take what the section knows as an argument; if a number is ' +
      'missing, let a stage put it into the plan.',
  },
  {
    name: 'drawing-imports-words',
    from: '^src/report/drawing/',
    allowed: ['^src/report/drawing/', '^src/report/words/'],
    comment:
      'What several sections draw with knows no plan: shares and worded texts come in, SVG goes out. A drawing of one ' +
      'section alone stands in its own draw.ts.',
  },
  {
    name: 'sections-import-no-section',
    from: '^src/report/sections/([^/]+)/',
    allowed: [
      '^src/report/sections/$1/',
      '^src/report/(words|drawing|reorder)/',
      '^src/model/',
      '^src/problems/',
    ],
    comment:
      'A section stands by itself, so that it can be changed or taken out alone. Move what two of them share down, into ' +
      'src/report/words or src/report/drawing.',
  },
  ...['reorder', 'workbook', 'plan-json'].map((file) => ({
    name: `${file}-imports-words`,
    from: `^src/report/${file}/`,
    allowed: [`^src/report/(${file}|words|workbook)/`, '^src/model/', '^src/problems/'],
    comment:
      'A file to take away is written from the plan, with the cells that all workbooks share, and never from the page.',
  })),
  {
    name: 'compare-imports-model-and-plan-json',
    from: '^src/compare/',
    allowed: ['^src/compare/', '^src/model/', '^src/report/plan-json/plan-(document|version)\\.ts$'],
    comment:
      'Two plans are compared by what plan.json holds of them, whoever wrote it. Put what is missing into plan.json, and ' +
      'the wording into src/report/compare.',
  },
  {
    name: 'compared-imports-words',
    from: '^src/report/compare/',
    allowed: [
      '^src/report/(compare|words|drawing)/',
      '^src/report/page/fill-templates\\.ts$',
      '^src/compare/',
      '^src/model/',
    ],
    comment:
      'The page of two plans words what src/compare has reckoned, in the looks of the report. It knows no section: move ' +
      'what both need into src/report/words.',
  },
  {
    name: 'page-imports-report',
    from: '^src/report/page/',
    allowed: ['^src/report/(page|sections|words|drawing|reorder)/', '^src/model/', '^src/problems/'],
    comment:
      'The page is the frame that joins the sections. It draws no file and reaches stages through the plan.',
  },
  {
    name: 'library-imports-fronts',
    from: '^src/library\\.ts$',
    allowed: [
      '^src/plan-army\\.ts$',
      '^src/model/',
      '^src/sheets/read-sheets\\.ts$',
      '^src/compare/',
      '^src/report/',
      '^src/problems/',
    ],
    comment:
      'The library hands out what is there: reading, planning, comparing, the report. Let a stage do the reckoning, and ' +
      'src/report the wording.',
  },
  {
    name: 'cli-imports-fronts',
    from: '^src/cli/',
    allowed: [
      '^src/cli/',
      '^src/plan-army\\.ts$',
      '^src/assumptions/registry\\.ts$',
      '^src/sheets/',
      '^src/compare/',
      '^src/report/',
      '^src/problems/',
    ],
    comment:
      'The command line only connects sheets, plan-army, compare and report. Move the reckoning into a stage and the ' +
      'wording into src/report.',
  },
];

/** Each library and the one place that may import it. */
const libraries = [
  { library: 'exceljs', folders: ['^src/sheets/starter/', '^src/report/(workbook|reorder)/'] },
  // It parts the cells of every CSV that is read, and quotes every one that is written.
  {
    library: 'papaparse',
    folders: [
      '^src/sheets/(read|append|starter)/',
      '^src/report/reorder/',
      '^src/report/sections/instead/word-swap-row\\.ts$',
    ],
  },
  { library: 'yauzl', folders: ['^src/unpack/open-zip\\.ts$'] },
  { library: 'handlebars', folders: ['^src/report/page/'] },
  { library: 'decimal.js', folders: ['^src/model/money\\.ts$'] },
  { library: 'commander', folders: ['^src/cli/'] },
  { library: 'zod', folders: ['^src/report/'] },
  { library: 'fastest-levenshtein', folders: ['^src/sheets/'] },
  { library: 'highs', folders: ['^src/order/solver/'] },
  { library: 'pure-rand', folders: ['^src/ranges/open-stream\\.ts$'] },
  { library: 'culori', folders: ['^src/colour/'] },
];

/** Matches a library whether it is found in node_modules, only typed there, or not installed. */
const pathsOf = (library) => {
  const name = library.replaceAll('.', '\\.');
  return [`^${name}$`, `^${name}/`, `node_modules/${name}/`, `node_modules/@types/${name}/`];
};

const inWords = (paths) => paths.join(', ').replace(/[\^\\$]/g, '');

const core = (...names) => `^(node:)?(${names.join('|')})(/|$)`;

const fileReaders = ['^src/sheets/read/', '^src/cli/', '^src/report/page/load-template\\.ts$'];
/** The solver has a thread of its own, and touches no file. */
const threadOwners = [
  '^src/sheets/read/',
  '^src/cli/',
  '^src/order/solver/(open-solver|solver-worker|thread)\\.ts$',
];

export default {
  forbidden: [
    ...edges.map(({ name, from, allowed, comment }) => ({
      name,
      comment,
      severity: 'error',
      from: { path: from, ...(name.startsWith('order-') ? { pathNot: '^src/order/solver/' } : {}) },
      to: { path: '^src/', pathNot: allowed },
    })),
    ...libraries.map(({ library, folders }) => ({
      name: `${library.replace('.js', '')}-in-its-folder`,
      comment: `${library} belongs to ${inWords(folders)}, where it can be replaced. Call a function of that place, or take its result as plain data.`,
      severity: 'error',
      from: { path: '^src/', pathNot: folders },
      to: { path: pathsOf(library) },
    })),
    {
      name: 'listed-libraries-only',
      comment:
        'This library has no place yet. Add it to `libraries` in .dependency-cruiser.mjs with the one folder ' +
        'that uses it, and give its reason in DEVELOPERS.md.',
      severity: 'error',
      from: { path: '^src/' },
      to: {
        dependencyTypesNot: ['core', 'local'],
        pathNot: ['^src/', '^\\.', ...libraries.flatMap(({ library }) => pathsOf(library))],
      },
    },
    {
      name: 'files-in-readers-only',
      comment:
        'Files and other programs are for the sheet readers, the command line and the template loader. ' +
        'Take the bytes or the text as an argument, and return what is to be written.',
      severity: 'error',
      from: { path: '^src/', pathNot: fileReaders },
      to: { path: core('fs', 'child_process', 'cluster', 'module', 'vm') },
    },
    {
      name: 'threads-in-their-places',
      comment:
        'Threads and the cores they run on are for the sheet readers, the command line and the front of the solver. Keep the stage a ' +
        'plain function, and let one of those run it elsewhere.',
      severity: 'error',
      from: { path: '^src/', pathNot: threadOwners },
      to: { path: core('worker_threads', 'os') },
    },
    {
      name: 'no-network',
      comment: 'Everything runs offline on one machine: no part of the program opens a connection.',
      severity: 'error',
      from: { path: '^src/' },
      to: { path: core('http', 'https', 'http2', 'net', 'tls', 'dns', 'dgram', 'inspector') },
    },
    {
      name: 'no-clock-chance-or-console',
      comment:
        'The same sheets give the same bytes. The date and a seed come in as arguments; words go back to ' +
        'src/cli, which prints them.',
      severity: 'error',
      // The template loader hashes the page's own style and script, which is the same each time.
      from: {
        path: '^src/',
        pathNot: ['^src/cli/', '^src/sheets/read/', '^src/report/page/load-template\\.ts$'],
      },
      to: {
        path: core('process', 'console', 'perf_hooks', 'timers', 'crypto', 'readline', 'tty', 'async_hooks'),
      },
    },
    {
      name: 'nothing-outside-src',
      comment:
        'The program is what src holds; tests, samples and reports are not shipped in it. Move the code into src.',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['local'], pathNot: ['^src/', 'node_modules/'] },
    },
    {
      name: 'no-cycles',
      comment:
        'Two files that import each other are one file in two halves. Move what both need into a third, ' +
        'or turn the call round with an argument.',
      severity: 'error',
      from: { path: '^src/' },
      to: { circular: true },
    },
    {
      name: 'no-orphans',
      comment: 'Nothing imports this file and it imports nothing. Use it or delete it.',
      severity: 'error',
      from: { path: '^src/', orphan: true, pathNot: '\\.d\\.ts$' },
      to: {},
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { conditionNames: ['import', 'require', 'node', 'default', 'types'] },
  },
};
