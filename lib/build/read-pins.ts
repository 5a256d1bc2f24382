import type { StripPin } from '../derive/lumber/strip-plan/strip-problem.ts';
import type { Issue } from '../params/issue.ts';

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
    const pin = readPin(entry);
    const because = pin ? whyNot(pin, pins) : HOW;
    if (pin && because === undefined) pins.push(pin);
    else issues.push(wrong(entry, from, because));
  }
  return { pins, issues };
}

function readPin(entry: string): StripPin | undefined {
  const [, mark, said = ''] = /^(\S+)(?: +(.+))?$/.exec(entry) ?? [];
  if (mark === undefined) return undefined;
  let pin: StripPin = { mark };
  for (const word of said.split(',').map((one) => one.trim().toLowerCase())) {
    const strip = /^strip (\d+)$/.exec(word)?.[1];
    const meant = strip === undefined ? WORDS[word] : { strip: Number(strip) };
    if (word !== '' && !meant) return undefined;
    pin = { ...pin, ...meant };
  }
  return pin;
}

function whyNot({ mark, strip }: StripPin, pins: readonly StripPin[]): string | undefined {
  if (pins.some((other) => other.mark === mark)) return `board ${mark} stands twice`;
  return strip === 0 ? 'strips are counted from the left edge, and the first is 1' : undefined;
}

const wrong = (given: string, from: string, because: string | undefined): Issue => ({
  code: 'unreadable',
  path: 'lumber.pinned',
  given,
  from,
  unit: '',
  via: 'file',
  expected: 'a board settled by hand',
  because,
  try: '3 strip 2; 7 show, A up, turned',
});
