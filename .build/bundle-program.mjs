// Build: the program with every library in it. In: the checkout. Out: files of dist/program by name, and the modules that
// went into them. All stand in one folder: a thread is started by a path beside the file that starts it.
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, join } from 'node:path';
import { rolldown } from 'rolldown';
import { compileTemplates } from './compile-templates.mjs';
import { replaceModules } from './replace-modules.mjs';

const { resolve } = createRequire(import.meta.url);

/** The command line, the library, and each thread by the name of its file. */
function listEntries(root) {
  const threads = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('-worker.ts'))
    .map((name) => [basename(name, '.ts'), join(root, 'src', name)]);
  return {
    main: join(root, 'src/cli/main.ts'),
    library: join(root, 'src/library.ts'),
    ...Object.fromEntries(threads),
  };
}

/**
 * Bundles from the sources; types are not looked at. What the program loads late stays in files of its own. Nothing is
 * made shorter, so that a crash report can be read. Throws where a module is missing.
 * @param {string} root the checkout
 */
export async function bundleProgram(root) {
  const bundle = await rolldown({
    cwd: root,
    input: listEntries(root),
    platform: 'node',
    plugins: [replaceModules(() => compileTemplates(root))],
    // Our own modules do nothing on being loaded, so what nobody asks for can go.
    treeshake: { moduleSideEffects: [{ test: /[\\/]src[\\/]/, sideEffects: false }] },
  });
  const { output } = await bundle.generate({
    format: 'cjs',
    entryFileNames: '[name].js',
    chunkFileNames: '[name].js',
  });
  await bundle.close();
  const solver = resolve('highs/runtime');
  return {
    files: [
      ...output.map(({ fileName, code, source }) => [fileName, code ?? source]),
      [basename(solver), readFileSync(solver)],
    ],
    moduleIds: output.flatMap(({ modules = {} }) =>
      Object.keys(modules).filter((id) => modules[id].renderedLength > 0),
    ),
  };
}
