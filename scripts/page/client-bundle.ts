import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const ENTRY = fileURLToPath(new URL('../../lib/page/client/start-client.ts', import.meta.url));

let made: Promise<string> | undefined;

/** The script of the page for the client, the same for every design: bundled once in a process. */
export function bundleClient(): Promise<string> {
  made ??= bundle();
  return made;
}

async function bundle(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [ENTRY],
    absWorkingDir: path.dirname(ENTRY),
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
  return outputFiles[0]!.text;
}
