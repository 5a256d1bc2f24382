import { firstControl, hasControls } from './control-characters.ts';
import { nearMiss } from './near-miss.ts';
import type { ChoiceParam, FlagParam, TextParam } from './param.ts';
import { bad, describeGiven, good, type Reading } from './reading.ts';

const FLAGS: Readonly<Record<string, boolean>> = {
  yes: true,
  true: true,
  on: true,
  no: false,
  false: false,
  off: false,
};

export function readChoice({ options }: ChoiceParam, raw: unknown): Reading<string> {
  const given = describeGiven(raw);
  if (typeof raw !== 'string') return bad({ code: 'wrong-type', kind: 'choice', given, options });
  const word = raw.trim();
  if (options.includes(word)) return good(word, given);
  const didYouMean = nearMiss(word, options);
  const tries = didYouMean === undefined ? [] : [didYouMean];
  return bad({ code: 'not-an-option', kind: 'choice', given, options, didYouMean, tries });
}

export function readFlag(_param: FlagParam, raw: unknown): Reading<boolean> {
  const given = describeGiven(raw);
  if (typeof raw === 'boolean') return good(raw, given);
  if (typeof raw !== 'string') return bad({ code: 'wrong-type', kind: 'flag', given });
  const word = raw.trim().toLowerCase();
  if (Object.hasOwn(FLAGS, word)) return good(FLAGS[word]!, given);
  return bad({ code: 'unreadable', kind: 'flag', given });
}

/** One line of text, kept as it came. */
export function readText({ maxLength }: TextParam, raw: unknown): Reading<string> {
  const given = describeGiven(raw);
  if (typeof raw !== 'string') return bad({ code: 'wrong-type', kind: 'text', given });
  if (raw.length > maxLength) return bad({ code: 'text-too-long', kind: 'text', given, max: maxLength });
  if (!hasControls(raw)) return good(raw, given);
  return bad({ code: 'control-character', kind: 'text', given, item: firstControl(raw) });
}
