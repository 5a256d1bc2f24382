import { describeParams, OUTPUTS, trestleParams } from 'tablewright';
import { readmeCommands } from './readme-commands.ts';

/** The sections of the README that are written from the code, by name. */
export const readmeSections = (): ReadonlyMap<string, string> =>
  new Map([
    ['commands', readmeCommands()],
    ['parameters', parameterTable()],
    ['outputs', outputTable()],
  ]);

/**
 * A text with each section put between its two marks.
 *
 * @throws RangeError when a mark is missing.
 */
export function withSections(text: string, sections: ReadonlyMap<string, string>): string {
  return [...sections].reduce((readme, [name, body]) => {
    const [start, end] = [`<!-- ${name}: written by scripts/readme.ts -->`, `<!-- end of ${name} -->`];
    const [from, to] = [readme.indexOf(start), readme.indexOf(end)];
    if (from < 0 || to < from) throw new RangeError(`the README has no marks for the section ${name}`);
    return `${readme.slice(0, from + start.length)}\n\n${body}\n\n${readme.slice(to)}`;
  }, text);
}

function parameterTable(): string {
  const rows = describeParams(trestleParams).map((row) => {
    const range = row.options.length > 0 ? row.options.join(', ') : `${row.min} to ${row.max}`;
    return `| \`${row.path}\` | ${row.label} | ${row.default} | ${range}${row.entries ? `, ${row.entries}` : ''} |`;
  });
  return ['| parameter | what it is | default | range |', '| --- | --- | --- | --- |', ...rows].join('\n');
}

function outputTable(): string {
  const rows = OUTPUTS.map(({ name, summary }) => `| \`${name}\` | ${summary} |`);
  return ['| `--only` | what it is |', '| --- | --- |', ...rows].join('\n');
}
