import { readFileSync } from 'node:fs';
import type { Source } from 'tablewright';
import type { Complaint } from '../report/complaint.ts';
import { fileReason } from '../report/file-reason.ts';

const OPTION = '--params';

/** The nested record in a JSON file; what it says of parameters is judged later. */
export function readParamsFile(file: string): Source | Complaint {
  let text: string;
  try {
    text = readFileSync(file, 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    return { code: 'file-unreadable', given: file, subject: OPTION, because: fileReason(error) };
  }
  try {
    return { values: JSON.parse(text), from: `${OPTION} ${JSON.stringify(file)}` };
  } catch (error) {
    const example = 'a file with { "top": { "length": "72 in" } } in it';
    return { code: 'not-json', given: file, subject: OPTION, because: placed(error, text), try: example };
  }
}

/** The reason with line and column for a position. */
function placed(error: unknown, text: string): string {
  const reason = (error as SyntaxError).message.replace(/\s+/g, ' ');
  return reason.replace(/ in JSON at position (\d+)$| after JSON at position (\d+)$/, (_, inside, after) => {
    const before = text.slice(0, Number(inside ?? after)).split('\n');
    return ` at line ${before.length}, column ${before.at(-1)!.length + 1}`;
  });
}
