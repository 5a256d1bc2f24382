import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'esbuild';
import { SHOP_FILE } from '../input/load-shop.ts';
import { pageScript } from './page-script.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const LIB = path.join(ROOT, 'lib');

/** What makes files: a page never runs it. */
const OUTPUTS = path.join(LIB, 'build', 'outputs.ts');

/** Packages of the library that a page runs; those that make files or plan lumber stay out. */
const PACKAGES = /^(?:three|earcut)(?:\/|$)/;

/**
 * The script of the live page: the library, one design file with all it imports, and the shop. The same text is run by
 * the page and by its worker.
 *
 * @throws Error from the bundler when the design or what it imports cannot be read.
 */
export async function bundleBench(designFile: string, shopFile = SHOP_FILE): Promise<string> {
  const shop = existsSync(shopFile) ? `import shop from ${JSON.stringify(shopFile)};` : 'const shop = undefined;';
  const entry = [
    `import { startBench } from ${JSON.stringify(path.join(LIB, 'page/bench/start-bench.ts'))};`,
    `import design from ${JSON.stringify(designFile)};`,
    shop,
    'startBench(design, shop);',
  ].join('\n');
  const script = await pageScript({
    stdin: { contents: entry, resolveDir: ROOT, sourcefile: 'bench.ts', loader: 'ts' },
    absWorkingDir: ROOT,
    plugins: [ownName],
  });
  return guarded(script);
}

/** What would end the script element early stands only in texts and comments, where a backslash does no harm. */
const guarded = (script: string): string => script.replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--');

/** `tablewright` is the library beside this script, wherever a design lies; of the library only what is used comes in. */
const ownName: Plugin = {
  name: 'own-name',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^tablewright$/ }, () => ({ path: path.join(LIB, 'index.ts'), sideEffects: false }));
    onResolve({ filter: /^\..*\.ts$/ }, ({ path: target, resolveDir }) => {
      const file = path.join(resolveDir, target);
      return file.startsWith(LIB + path.sep) ? { path: file, sideEffects: false } : undefined;
    });
    onResolve({ filter: /^[^./]/ }, ({ path: name, importer }) =>
      importer.startsWith(LIB + path.sep) && !PACKAGES.test(name)
        ? { path: name, namespace: 'left-out', sideEffects: false }
        : undefined,
    );
    onLoad({ filter: /./, namespace: 'left-out' }, () => ({ contents: 'module.exports = {};', loader: 'js' }));
    onLoad({ filter: /outputs\.ts$/ }, ({ path: file }) =>
      file === OUTPUTS ? { contents: 'export const OUTPUTS = [];', loader: 'ts' } : undefined,
    );
  },
};
