import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { pageScript } from './page-script.ts';

const ENTRY = fileURLToPath(new URL('../../lib/page/client/start-client.ts', import.meta.url));

let made: Promise<string> | undefined;

/** The script of the page for the client, the same for every design: bundled once in a process. */
export function bundleClient(): Promise<string> {
  made ??= pageScript({ entryPoints: [ENTRY], absWorkingDir: path.dirname(ENTRY) });
  return made;
}
