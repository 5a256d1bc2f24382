/** Glyphs of a stretch of text and how they follow each other, as the writer of a PDF asks for them. */
interface Run {
  readonly glyphs: readonly {
    readonly id: number;
    readonly advanceWidth: number;
    readonly codePoints: readonly number[];
  }[];
  readonly positions: readonly object[];
  readonly advanceWidth: number;
}

/** A face in one document, as far as it sets text. */
export interface Setting {
  layoutRun: (text: string, features?: readonly string[]) => Run;
}

/** By the bytes of the face: the runs of all documents, since setting text takes most of the time of a document. */
const runs = new WeakMap<Uint8Array, Map<string, Run>>();

const done = new WeakSet<Setting>();

/** Makes a face set each stretch of text once, for all documents that have the same face. */
export function rememberRuns(face: Setting, bytes: Uint8Array): void {
  if (done.has(face)) return;
  done.add(face);
  const known = runs.get(bytes) ?? new Map<string, Run>();
  runs.set(bytes, known);
  const set = face.layoutRun.bind(face);
  face.layoutRun = (text, features) => {
    const key = `${features?.join() ?? ''} ${text}`;
    const before = known.get(key);
    if (before) return before;
    const { glyphs, positions, advanceWidth } = set(text, features);
    // Without the face of this document, which the glyphs themselves hold on to.
    const plain = glyphs.map((glyph) => ({
      id: glyph.id,
      advanceWidth: glyph.advanceWidth,
      codePoints: glyph.codePoints,
    }));
    const run: Run = { glyphs: plain, positions, advanceWidth };
    known.set(key, run);
    return run;
  };
}
