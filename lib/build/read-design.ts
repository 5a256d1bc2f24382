import type { Issue } from '../params/issue.ts';
import { readLoads } from '../shop/loads.ts';
import { readLumberWishes } from '../shop/lumber-wishes.ts';
import { readSheets } from '../shop/sheets.ts';
import { readSite } from '../shop/site.ts';
import type { Design } from './design.ts';

/** A loaded design, or everything that is wrong with what its file exports. */
export type DesignOutcome =
  | { readonly design: Design; readonly issues?: never }
  | { readonly issues: readonly Issue[]; readonly design?: never };

const DATE = /^\d{4}-\d{2}-\d{2}$/;

interface Field {
  readonly name: keyof Design;
  readonly good: (value: unknown) => boolean;
  readonly must: string;
}

const isText = (value: unknown): boolean => typeof value === 'string' && value.trim() !== '';
const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

const FIELDS: readonly Field[] = [
  { name: 'title', good: isText, must: 'a text: what the piece is called' },
  { name: 'number', good: (v) => v === undefined || isText(v), must: 'a text, or left out' },
  { name: 'revision', good: isText, must: 'a text such as "A"' },
  { name: 'date', good: (v) => typeof v === 'string' && DATE.test(v), must: 'a date written YYYY-MM-DD' },
  { name: 'units', good: (v) => v === 'in' || v === 'mm', must: '"in" or "mm"' },
  { name: 'params', good: (v) => isRecord(v) && v['table'] instanceof Map, must: 'what defineParams answers' },
  { name: 'values', good: isRecord, must: 'a record of values; {} for the defaults' },
  { name: 'compose', good: (v) => typeof v === 'function', must: 'a function from values to an assembly' },
];

/** Checks what a design file exports as its default, all fields at once; the values of its parameters are read later. */
export function readDesign(module: unknown, file: string): DesignOutcome {
  const candidate = isRecord(module) ? module['default'] : undefined;
  if (!isRecord(candidate)) {
    return { issues: [issue(file, 'default export', candidate, 'a design: export default defineDesign({ … })')] };
  }
  const issues = FIELDS.filter(({ name, good }) => !good(candidate[name])).map(({ name, must }) =>
    issue(file, name, candidate[name], must),
  );
  issues.push(...(readSite(candidate['site'], file).issues ?? []));
  issues.push(...(readLoads(candidate['loads'], file).issues ?? []));
  // Boards settled by hand are judged with the table of boards: `readRecords`.
  issues.push(...(readLumberWishes(candidate['lumber'], file).issues ?? []));
  issues.push(...(readSheets(candidate['sheets'], file).issues ?? []));
  return issues.length > 0 ? { issues } : { design: candidate as unknown as Design };
}

const issue = (file: string, path: string, given: unknown, must: string): Issue => ({
  code: 'wrong-type',
  path,
  given: describe(given),
  from: file,
  unit: '',
  via: 'file',
  expected: must,
});

function describe(value: unknown): string {
  if (value === undefined) return 'missing';
  if (typeof value === 'string') return JSON.stringify(value);
  if (typeof value === 'function') return 'a function';
  if (Array.isArray(value)) return 'a list';
  return typeof value === 'object' && value !== null ? 'a record' : String(value);
}
