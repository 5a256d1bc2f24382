import { hasControls } from './control-characters.ts';
import type { Issue } from './issue.ts';

/** A value given on the command line. */
export interface Override {
  readonly path: string;
  readonly text: string;
  /** How it was given, for messages: `--set "top.length=72 in"`. */
  readonly from: string;
}

export type Assignment =
  | { readonly override: Override; readonly issue?: never }
  | { readonly issue: Issue; readonly override?: never };

/** Splits `top.length=72 in` at its first `=`. The text behind it is left as it came. */
export function parseAssignment(argument: string, option = '--set'): Assignment {
  const from = `${option} ${quote(argument)}`;
  const at = argument.indexOf('=');
  const path = argument.slice(0, Math.max(at, 0)).trim();
  if (path) return { override: { path, text: argument.slice(at + 1), from } };
  const because = at < 0 ? 'there is no = in it' : 'there is no path before the =';
  const via = option === '--vary' || option === '--milled' ? option : undefined;
  return { issue: { code: 'not-an-assignment', path: '', given: argument, from, unit: '', because, via } };
}

/** The option that gives a parameter a value, as one would type it. */
export const setOption = (path: string, text: string, option = '--set'): string =>
  `${option} ${quote(`${path}=${text}`)}`;

/** The line in a file of the maker that gives a value: `clamps: { short: { count: 8 } }`. */
export function fieldLine(path: string, text: string): string {
  const [name = '', ...inner] = path.split('.');
  return `${name}: ${inner.length > 0 ? `{ ${fieldLine(inner.join('.'), text)} }` : literal(text)}`;
}

/** Text as it stands in a file: numbers, yes and no without quotes. */
function literal(text: string): string {
  if (/^-?\d+(?:\.\d+)?$/.test(text)) return text;
  if (text === 'yes' || text === 'no') return `${text === 'yes'}`;
  return `'${text.replace(/['\\]/g, '\\$&')}'`;
}

/** An argument in the quotes a shell wants around it; control characters show as escapes. */
function quote(argument: string): string {
  if (hasControls(argument)) return JSON.stringify(argument);
  if (!/["\\$`!]/.test(argument)) return `"${argument}"`;
  if (!argument.includes("'")) return `'${argument}'`;
  return `"${argument.replace(/["\\$`]/g, '\\$&')}"`;
}
