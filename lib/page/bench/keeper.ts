import type { Issue } from '../../params/issue.ts';
import type { Fields, ValuesOf } from '../../params/spec.ts';
import type { UnitSystem } from '../../units/format-length.ts';
import type { Bench } from './bench.ts';
import { type Edits, NO_EDITS, withEdit } from './edits.ts';
import type { Examiner } from './examiner.ts';
import { type History, moveOn, redo, startHistory, undo } from './history.ts';
import { type Piece, pieceMaker } from './piece.ts';
import { readEdits, withoutIdle } from './read-edits.ts';
import type { Hands, Mark, View } from './view.ts';

/** What is tried at the moment, and all that follows from it. */
export interface Keeper extends Hands {
  view(): View;
  /** The values of the design without edits, when they are good. */
  readonly design: ValuesOf<Fields> | undefined;
  /** Works out what follows from the edits: the piece, told at once; then what is found. */
  work(made: (view: View) => void): void;
}

export interface KeeperOptions {
  readonly edits: Edits;
  readonly units: UnitSystem;
  readonly examiner: Examiner;
  /** There is something to work out. */
  readonly wake: () => void;
}

/** Keeps the edits of a bench with their history, and what they make. */
export function keepBench(bench: Bench, { edits: start, units: spoken, examiner, wake }: KeeperOptions): Keeper {
  const make = pieceMaker(bench);
  const design = readEdits(bench, NO_EDITS).values;
  let history: History = startHistory(start);
  let units = spoken;
  let issues: readonly Issue[] = [];
  let failure: string | undefined;
  let piece: Piece | undefined;
  let mark: Omit<Mark, 'found'> | undefined;
  let worked: { readonly edits: Edits; readonly units: UnitSystem } | undefined;

  const view = (): View => ({
    units,
    edits: history.now,
    issues,
    failure,
    piece,
    found: examiner.found(),
    mark: mark && { ...mark, found: examiner.whole(mark.piece, units) },
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
  });
  /** Values that pass all rules and still cannot be put together are the design's to tell. */
  const tryPiece = (values: ValuesOf<Fields>): Piece | undefined => {
    try {
      return make(values);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      failure = error.message;
      return undefined;
    }
  };
  const designMark = (): Omit<Mark, 'found'> | undefined => {
    const own = design && besidePiece(bench, design);
    return own && { isDesign: true, piece: own };
  };
  const go = (next: History): void => {
    if (next === history) return;
    history = next;
    wake();
  };
  const edited = (path: string, text: string): Edits =>
    withoutIdle(bench, withEdit(history.now, path, text), path, design);
  return {
    design,
    view,
    work(made) {
      const edits = history.now;
      const sameValues = worked?.edits === edits;
      if (sameValues && worked?.units === units) return;
      worked = { edits, units };
      const outcome = readEdits(bench, edits);
      issues = outcome.issues ?? [];
      failure = undefined;
      const next = outcome.values && (sameValues && piece ? piece : tryPiece(outcome.values));
      if (!next) return;
      piece = next;
      made(view());
      mark ??= edits.size === 0 ? { isDesign: true, piece } : (designMark() ?? { isDesign: false, piece });
      examiner.look(piece, units);
    },
    set: (path, text, movement) => go(moveOn(history, edited(path, text), movement)),
    setIfGood(path, text, movement) {
      const next = edited(path, text);
      if (!readEdits(bench, next).issues) go(moveOn(history, next, movement));
    },
    putBack: (path) => go(moveOn(history, withEdit(history.now, path, undefined))),
    putAllBack: () => go(moveOn(history, NO_EDITS)),
    undo: () => go(undo(history)),
    redo: () => go(redo(history)),
    setUnits(next) {
      units = next;
      wake();
    },
    markHere() {
      if (piece) mark = { isDesign: false, piece };
      wake();
    },
    markDesign() {
      mark = designMark() ?? mark;
      wake();
    },
  };
}

/** A piece beside the one at hand, which keeps its shapes. */
function besidePiece(bench: Bench, values: ValuesOf<Fields>): Piece | undefined {
  try {
    return pieceMaker(bench)(values);
  } catch {
    return undefined;
  }
}
