import { either, listed } from '../../lib/params/must-be.ts';
import { EXIT, type Exit } from '../exit.ts';
import type { Complaint, ComplaintCode } from './complaint.ts';

interface Entry {
  readonly exit: Exit;
  /** The problem itself; what is allowed and what to try comes from the data. */
  readonly says: (complaint: Complaint) => string;
}

const wrongUse = (says: Entry['says']): Entry => ({ exit: EXIT.wrongUse, says });
const failed = (says: Entry['says']): Entry => ({ exit: EXIT.failed, says });

const ENTRIES: { readonly [K in ComplaintCode]: Entry } = {
  'unknown-command': wrongUse(({ given }) => `there is no command ${given}`),
  'unknown-option': wrongUse(({ given }) => `there is no option ${given}`),
  'option-not-here': wrongUse(({ given, subject }) => `${subject} takes no ${given}`),
  'value-missing': wrongUse(({ given }) => `${given} needs a value`),
  'value-not-wanted': wrongUse(({ given, subject }) => `${subject} takes no value; it came with ${quoted(given)}`),
  'given-twice': wrongUse(({ given, subject }) => `${subject} is given more than once: ${given}`),
  'not-a-choice': wrongUse(
    ({ given, subject, options = [] }) => `${subject} is ${quoted(given)}; it must be ${either(options)}`,
  ),
  'needs-option': wrongUse(({ given, subject }) => `${given} goes only with ${subject}`),
  'not-beside': wrongUse(({ given, subject }) => `${given} does not go with ${subject}`),
  'wrong-ending': wrongUse(({ given, subject }) => `${subject} is ${quoted(given)}; its name must end in .svg`),
  'design-missing': wrongUse(({ subject }) => `${subject} needs a design`),
  'too-many-arguments': wrongUse(({ given, subject }) => `${quoted(given)} is one too many for ${subject}`),
  'unknown-design': wrongUse(({ given }) => `there is no design ${given}`),
  'one-design-only': wrongUse(({ given, subject }) => `${subject} is for one design; this would be ${given}`),
  'same-folder': wrongUse(({ given, subject }) => `${given} would both be written to ${subject}`),
  'file-unreadable': wrongUse(({ given, subject }) => `${subject} ${quoted(given)} cannot be read`),
  'not-json': wrongUse(({ given, subject }) => `${subject} ${quoted(given)} is no JSON`),
  'design-broken': wrongUse(({ given }) => `${given} cannot be loaded`),
  'compose-broken': wrongUse(({ subject }) => `${subject} cannot be put together`),
  blocked: failed(({ given, subject }) => `${subject} is not built: ${given}`),
  'not-writable': failed(({ given }) => `${given} cannot be written`),
  'port-taken': failed(({ given }) => `the live page cannot be served at ${given}`),
  'not-ours': failed(({ given, subject }) => `${subject} would be replaced as a whole, and no build made ${given}`),
  outside: failed(({ given, subject }) => `${quoted(given)} cannot be written: it would lie outside ${subject}`),
  bug: { exit: EXIT.bug, says: ({ given }) => given },
};

/** Codes whose first line has no room for the choice: it gets a line of its own. */
const LISTS_OPTIONS: ReadonlySet<ComplaintCode> = new Set([
  'unknown-command',
  'unknown-option',
  'option-not-here',
  'design-missing',
  'unknown-design',
]);

const INDENT = ' '.repeat('error: '.length);

/** The sentence of a complaint, the one place where it is made. */
export function renderComplaint(complaint: Complaint): string {
  const { code, because, didYouMean } = complaint;
  const lines = [
    ENTRIES[code].says(complaint),
    ...(because?.split('\n') ?? []),
    didYouMean && `did you mean ${didYouMean}?`,
    choice(complaint),
    complaint.try && `try ${complaint.try}`,
  ];
  return `error: ${lines.filter(Boolean).join(`\n${INDENT}`)}`;
}

export const exitOfComplaint = ({ code }: Complaint): Exit => ENTRIES[code].exit;

export const isComplaint = (problem: { readonly code: string }): problem is Complaint =>
  Object.hasOwn(ENTRIES, problem.code);

function choice({ code, options = [], didYouMean }: Complaint): string | undefined {
  if (!LISTS_OPTIONS.has(code) || didYouMean || options.length === 0) return undefined;
  if (code === 'option-not-here') return `it goes with ${listed(options, 'and')}`;
  return `there ${options.length === 1 ? 'is only' : 'are'} ${listed(options, 'and')}`;
}

/** In quotes on one line, control characters as escapes. */
const quoted = (text: string): string => JSON.stringify(text.length > 120 ? `${text.slice(0, 117)}...` : text);
