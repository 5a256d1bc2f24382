import { styleText } from 'node:util';
import type { Verdict } from 'tablewright';

/** One style, not a list: for a list, Node 20 does not ask whether the stream is a terminal. */
type Style = Exclude<Parameters<typeof styleText>[0], readonly unknown[]>;

/** Colors text for one stream; plain when that is no terminal or NO_COLOR is set. */
export type Paint = (style: Style, text: string) => string;

export const paintFor =
  (stream: NodeJS.WriteStream): Paint =>
  (style, text) =>
    styleText(style, text, { stream });

/** Only an addition: the verdict is always printed in words. */
export const VERDICT_STYLE: { readonly [V in Verdict]: Style } = {
  'change it': 'red',
  'look again': 'yellow',
  'not checked': 'cyan',
  ok: 'green',
};
