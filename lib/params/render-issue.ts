import type { UnitSystem } from '../units/format-length.ts';
import { fieldLine, setOption } from './assignment.ts';
import { hasControls } from './control-characters.ts';
import type { Issue, IssueCode } from './issue.ts';
import { either, listed, mustBe, rangeOf } from './must-be.ts';

/** The lines of the sentence, the first being the problem itself. */
type Sentence = (issue: Issue, units: UnitSystem) => readonly (string | false | undefined)[];

const INDENT = ' '.repeat('error: '.length);

const SENTENCES: { readonly [K in IssueCode]: Sentence } = {
  'not-an-assignment': (issue) =>
    issue.via === '--vary'
      ? [
          `${quoted(issue)} does not say what to try; write path=from..to:count or path=one,other`,
          issue.because,
          issue.try && `try ${setOption(issue.path, issue.try, issue.via)}`,
        ]
      : issue.via === '--milled'
        ? [`${quoted(issue)} does not say which board came out how thick; write mark=thickness`, ...end(issue)]
        : [`${quoted(issue)} is no assignment; write path=value`, issue.because],
  unknown: (issue) => [
    `there is no parameter ${oneLine(issue.path)}`,
    ...meant(issue),
    issue.via === 'file' && by(issue),
  ],
  'unknown-group': (issue) => [
    `there is no group ${oneLine(issue.path)}`,
    ...meant(issue),
    issue.via === 'file' && by(issue),
  ],
  'group-as-parameter': (issue) => [
    issue.path
      ? `${issue.path} is a group of parameters; it cannot be ${shown(issue)}`
      : `the parameters cannot be ${shown(issue)}; they must be a record`,
    `it has ${listed(issue.options ?? [], 'and')}`,
    by(issue),
  ],
  'parameter-as-group': (issue) => [`${issue.path} is a parameter, not a group; there is nothing below it`, by(issue)],
  repeated: (issue) => [`${issue.path} is given more than once: ${shown(issue)}`, by(issue)],
  'wrong-type': (issue, units) => [
    `${subject(issue)} is ${issue.given}; it must be ${expected(issue, units)}`,
    ...end(issue),
  ],
  unreadable: (issue, units) => [
    `${subject(issue)} is ${quoted(issue)}; it must be ${expected(issue, units)}`,
    ...end(issue),
  ],
  'no-unit': (issue) => [
    `${subject(issue)} is ${quoted(issue)}, without a unit; write ${withUnits(issue)}`,
    ...end(issue),
  ],
  'not-whole': (issue, units) => [
    `${subject(issue)} is ${shown(issue)}; it must be ${expected(issue, units)}`,
    ...end(issue),
  ],
  'out-of-range': (issue, units) => [
    `${subject(issue)} is ${shown(issue)}; it must be ${rangeOf(issue, units)}`,
    ...end(issue),
  ],
  'wrong-size': (issue, units) => [
    `${issue.path} has ${issue.given} ${issue.given === '1' ? 'entry' : 'entries'}; it must have ${rangeOf(issue, units)}`,
    ...end(issue),
  ],
  'not-an-option': (issue) => [
    `${issue.path} is ${quoted(issue)}; it must be ${either(issue.options ?? [])}`,
    issue.didYouMean && `did you mean ${issue.didYouMean}?`,
    ...end(issue),
  ],
  'text-too-long': (issue) => [
    `${issue.path} has ${issue.given.length} characters; it may have ${issue.max}`,
    ...end(issue),
  ],
  'control-character': (issue) => [
    `${issue.path} is ${quoted(issue)}; it must be one line without control characters`,
    `character ${issue.item} is one`,
    ...end(issue),
  ],
  rule: (issue) => [`${issue.path} is ${shown(issue)}; that does not go with the rest`, ...end(issue)],
  'not-a-range': (issue, units) => [
    `${issue.path} cannot be tried over ${quoted(issue)}; it must be ${issue.expected}`,
    issue.kind && `each value is ${mustBe(issue.kind, issue, units)}`,
    ...end(issue),
  ],
  'cannot-vary': (issue) => [`${issue.path} cannot be tried over a range`, ...end(issue)],
  'unknown-column': (issue) => [`there is no column ${quoted(issue)}`, ...meant(issue), by(issue)],
  'missing-column': (issue) => [`the column ${issue.path} is missing`, ...end(issue)],
  'broken-table': (issue) => [`${issue.path} cannot be read`, ...end(issue)],
  'no-fit': (issue) => [`no plane can be laid through the readings of ${issue.path}`, ...end(issue)],
};

/** The sentence of an issue, the one place where it is made. Lengths without a unit of their own print in `units`. */
export function renderIssue(issue: Issue, units: UnitSystem): string {
  const lines = SENTENCES[issue.code](issue, units).filter(Boolean);
  return `error: ${lines.join(`\n${INDENT}`)}`;
}

/** All issues, and how it ended. */
export function renderIssues(issues: readonly Issue[], units: UnitSystem, ending = 'nothing was written'): string {
  const count = issues.length === 1 ? '1 problem' : `${issues.length} problems`;
  return [...issues.map((issue) => renderIssue(issue, units)), `${count}; ${ending}`].join('\n\n');
}

function end(issue: Issue): readonly (string | undefined)[] {
  const { path, because, via } = issue;
  const tries = issue.try;
  if (tries === undefined) return [because, by(issue)];
  return [because, by(issue), `try ${TRIES[via ?? '--set'](path, tries)}`];
}

/** What to write instead, as it would stand there. */
const TRIES: { readonly [V in NonNullable<Issue['via']>]: (path: string, text: string) => string } = {
  '--set': setOption,
  '--vary': (path, text) => setOption(path, text, '--vary'),
  '--milled': (path, text) => setOption(path.replace(/^board /, ''), text, '--milled'),
  file: fieldLine,
  table: (_, text) => text,
};

function meant({ didYouMean, because, options = [] }: Issue): readonly string[] {
  if (because) return [because];
  if (didYouMean) return [`did you mean ${didYouMean}?`];
  return [`there ${options.length === 1 ? 'is only' : 'are'} ${listed(options, 'and')}`];
}

const by = ({ from }: Issue): string => `given by ${from}`;

const subject = ({ path, item }: Issue): string => (item === undefined ? path : `${path}, entry ${item},`);

const expected = (issue: Issue, units: UnitSystem): string =>
  issue.expected ?? (issue.kind ? mustBe(issue.kind, issue, units) : 'a value');

function withUnits({ given, unit }: Issue): string {
  const bare = given.trim();
  return unit === 'length' ? `${bare} mm or ${bare} in` : `${bare} ${unit}`;
}

const quoted = ({ given }: Issue): string => JSON.stringify(shortened(given));

/** A value as it came, on one line. */
const shown = ({ given }: Issue): string => oneLine(given.trim().replace(/\s+/g, ' ')) || '""';

const oneLine = (text: string): string => shortened(hasControls(text) ? JSON.stringify(text) : text);

const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}...` : text);
