import type { StripPin } from '../derive/lumber/strip-plan/strip-problem.ts';
import type { Issue } from '../params/issue.ts';
import { nearMiss } from '../params/near-miss.ts';
import { pinEntry } from './pin-words.ts';

const WORDS: Readonly<Record<string, Partial<StripPin>>> = {
  show: { layer: 'show' },
  under: { layer: 'bottom' },
  'a up': { faceUp: 'A' },
  'b up': { faceUp: 'B' },
  turned: { turned: true },
  'not turned': { turned: false },
};

const HOW = 'the mark, then strip and its number from the left, show or under, A up or B up, turned or not turned';

/** What the maker settled by hand, from text such as `3 strip 2; 7 show, A up, turned`. */
export function readPins(
  text: string,
  from = 'the design file',
): { pins: readonly StripPin[]; issues: readonly Issue[] } {
  const entries = text
    .split(';')
    .map((one) => one.trim())
    .filter(Boolean);
  const pins: StripPin[] = [];
  const issues: Issue[] = [];
  for (const entry of entries) {
    const { pin, because } = readPin(entry);
    const known = pins.find(({ mark }) => mark === pin?.mark);
    if (because !== undefined || !pin) issues.push(wrong(entry, from, because ?? HOW, pin));
    else if (known) issues.push(wrong(entry, from, `board ${pin.mark} stands twice`, { ...known, ...pin }));
    else pins.push(pin);
  }
  return { pins, issues };
}

/** The pin that an entry means, or what keeps it from meaning one and the pin that comes nearest. */
interface Read {
  readonly pin?: StripPin;
  readonly because?: string;
}

function readPin(entry: string): Read {
  const [, mark, said = ''] = /^(\S+)(?: +(.+))?$/.exec(entry) ?? [];
  if (mark === undefined) return {};
  const words = said.split(',').map((one) => one.trim().toLowerCase());
  let pin: StripPin = { mark };
  let because: string | undefined;
  for (const word of words.filter(Boolean)) {
    const meant = meaningOf(word);
    if (!meant) because ??= HOW;
    else if (meant.strip === 0) because ??= 'strips are counted from the left edge, and the first is 1';
    else if (isAgainst(pin, meant)) because ??= `${word} does not go with what the entry says before`;
    pin = { ...(meant?.strip === 0 ? { strip: 1 } : (meant ?? meaningOf(nearMiss(word, Object.keys(WORDS))))), ...pin };
  }
  return because === undefined ? { pin } : { pin, because };
}

function meaningOf(word = ''): Partial<StripPin> | undefined {
  const strip = /^strip (\d+)$/.exec(word)?.[1];
  return strip === undefined ? WORDS[word] : { strip: Number(strip) };
}

/** Both say something of the same, and not the same. */
const isAgainst = (pin: StripPin, meant: Partial<StripPin>): boolean =>
  (Object.keys(meant) as (keyof StripPin)[]).some((key) => key in pin && pin[key] !== meant[key]);

/** Where nothing that can be used is left of an entry. */
const EXAMPLE = '3 strip 2; 7 show, A up, turned';

const wrong = (given: string, from: string, because: string, nearest: StripPin | undefined): Issue => ({
  code: 'unreadable',
  path: 'lumber.pinned',
  given,
  from,
  unit: '',
  via: 'file',
  expected: 'a board settled by hand',
  because,
  try: nearest && Object.keys(nearest).length > 1 ? pinEntry(nearest) : EXAMPLE,
});
