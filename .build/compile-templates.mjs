// Build: the report's templates as code. In: the checkout. Out: a module that stands in for
// src/report/page/open-templates.ts and needs no more of handlebars than its runtime.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import handlebars from 'handlebars';
import { rolldown } from 'rolldown';

/** The list of files is the loader's own; it is bundled by itself so that it can be asked. */
async function loadSources(root) {
  const bundle = await rolldown({ input: join(root, 'src/report/page/load-template.ts'), platform: 'node' });
  const { output } = await bundle.generate({ format: 'es' });
  await bundle.close();
  const code = Buffer.from(output[0].code).toString('base64');
  const { loadTemplates } = await import(`data:text/javascript;base64,${code}`);
  return loadTemplates(pathToFileURL(join(root, 'templates/')));
}

const precompile = (text) => handlebars.precompile(text, { strict: true });

/** @param {string} root the checkout */
export async function compileTemplates(root) {
  const { pages, partials } = await loadSources(root);
  const listed = Object.entries(pages).map(
    ([name, { page, sheet }]) => `${name}: { spec: ${precompile(page)}, sheet: ${JSON.stringify(sheet)} }`,
  );
  return `import handlebars from 'handlebars/runtime.js';
const pages = {${listed.join(',\n')}};
const partials = {${partials.map(({ name, text }) => `${JSON.stringify(name)}: ${precompile(text)}`).join(',\n')}};
export async function openTemplates(name) {
  const bars = handlebars.create();
  for (const [part, spec] of Object.entries(partials)) bars.registerPartial(part, bars.template(spec));
  return { bars, page: bars.template(pages[name].spec), sheet: pages[name].sheet };
}
`;
}
