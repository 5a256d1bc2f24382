import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { shownPath } from '../report/shown-path.ts';

/** What a compiler says of a file that it cannot read: `/x/design.ts:2:7: ERROR: Unexpected ","`. */
const SYNTAX = /^(.+):(\d+):(\d+): ERROR: (.+)$/m;

/** The first line of the reason why something was thrown, and where in the design, without the stack. */
export function reasonOf(error: unknown, file: string): string {
  if (!(error instanceof Error)) return `it throws ${describe(error)}`;
  const syntax = SYNTAX.exec(error.message);
  if (syntax) {
    const [, at = '', line, column, text] = syntax;
    return `${shownPath(at)}, line ${line}, column ${Number(column) + 1}: ${text}`;
  }
  const said = error.message.split('\n')[0]!.replaceAll(`${process.cwd()}${path.sep}`, '');
  const at = placeIn(error, path.dirname(file));
  return `${at ? `${at}: ` : ''}${error.name === 'Error' ? '' : `${error.name}: `}${said || 'no reason is given'}`;
}

/** The innermost line of a stack that lies in a folder: `design.ts, line 12`. */
function placeIn(error: Error, folder: string): string | undefined {
  const place = placesOf(error).find(({ file }) => file.startsWith(folder + path.sep));
  return place && `${shownPath(place.file)}, line ${place.line}`;
}

/** The files of a stack, innermost first. */
export function placesOf({ stack = '' }: Error): readonly { readonly file: string; readonly line: string }[] {
  return [...stack.matchAll(/^ +at .*?((?:file:\/\/)?\/[^()]*?):(\d+):\d+\)?$/gm)].map(([, at = '', line = '']) => ({
    file: at.startsWith('file:') ? fileURLToPath(at.replace(/\?.*$/, '')) : at,
    line,
  }));
}

function describe(thrown: unknown): string {
  if (typeof thrown === 'string') return JSON.stringify(thrown);
  return typeof thrown === 'object' && thrown !== null ? 'an object that is no Error' : String(thrown);
}
