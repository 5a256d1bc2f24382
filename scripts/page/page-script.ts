import { type BuildOptions, build } from 'esbuild';

/** One script for a page, as text: small, plain ASCII, ready to stand inside the page. @throws Error from the bundler. */
export async function pageScript(options: BuildOptions): Promise<string> {
  const { outputFiles } = await build({
    ...options,
    bundle: true,
    write: false,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    charset: 'ascii',
    legalComments: 'none',
    logLevel: 'silent',
  });
  return outputFiles![0]!.text;
}
