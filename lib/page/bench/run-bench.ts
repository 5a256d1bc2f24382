import { effectiveRange } from '../../params/effective-range.ts';
import { valueAt } from '../../params/values.ts';
import { openBoardsDesk } from '../worker/ask-boards.ts';
import { openDesk } from '../worker/ask-checks.ts';
import type { Bench } from './bench.ts';
import { boardsPanel } from './boards-panel.ts';
import { examinerOf } from './examiner.ts';
import { fieldHandsOf } from './field-hands.ts';
import { fieldState } from './field-state.ts';
import { fieldsPanel } from './fields-panel.ts';
import { afterPaint, frameLoop } from './frame-loop.ts';
import { type Keeper, keepBench } from './keeper.ts';
import { layOut } from './lay-out.ts';
import { FIRST_LOOKS } from './looks.ts';
import { recall, remember } from './memory.ts';
import { scenePanel } from './scene-panel.ts';
import { shortcuts } from './shortcuts.ts';
import type { Panel, View } from './view.ts';
import { listenToServer } from './watch-events.ts';

/** Quiet after which the limits of fields are looked up again, ms: they cost as much as a change. */
const QUIET = 200;

/** Runs the live page in an element that it fills. `script` is its own text, for the worker. */
export function runBench(bench: Bench, script: string, into: HTMLElement): void {
  const memory = recall(bench);
  const { params: spec, units } = bench.design;
  const desk = openDesk(bench.design, script);
  const examiner = examinerOf(bench, desk, () => frames.wake());
  const keeper: Keeper = keepBench(bench, {
    edits: new Map(memory?.edits ?? bench.set),
    units: memory?.units ?? units,
    examiner,
    wake: () => frames.wake(),
  });
  const limits = (): void => fields.limit((path) => limitsOf(bench, keeper.view(), path));
  const picture = scenePanel(memory?.looks ?? FIRST_LOOKS);
  const fields = fieldsPanel(spec, memory?.open ?? firstGroups(bench), {
    fieldHands: fieldHandsOf(keeper, limits),
    stateOf: (path, view) => fieldState(bench, keeper.design, path, view),
    opened: limits,
  });
  const boards = bench.records.boards && boardsPanel(bench, openBoardsDesk(script), keeper);
  const panels: readonly Panel[] = layOut(into, bench, keeper, picture, fields, boards);
  let quiet: ReturnType<typeof setTimeout> | undefined;
  // The page can be read before its picture is drawn for the first time: that takes as long as all the rest.
  let isRead = false;
  const frames = frameLoop(() => {
    const start = performance.now();
    keeper.work((view) => {
      if (!isRead) return;
      picture.show(view);
      document.dispatchEvent(new CustomEvent('shown', { detail: performance.now() - start }));
    });
    const view = keeper.view();
    for (const panel of panels) if (isRead || panel !== picture) panel.update(view);
    clearTimeout(quiet);
    quiet = setTimeout(limits, QUIET);
    document.dispatchEvent(new CustomEvent('settled', { detail: performance.now() - start }));
  });
  const keep = (): void =>
    remember(bench, {
      edits: [...keeper.view().edits],
      units: keeper.view().units,
      looks: picture.looks(),
      open: fields.open(),
      scroll: scrollY,
    });
  shortcuts(keeper);
  addEventListener('pagehide', keep);
  listenToServer({ onOther: keep, onBroken: showBroken });
  frames.now();
  afterPaint(() => {
    isRead = true;
    frames.now();
  });
  if (memory) scrollTo(0, memory.scroll);
}

/** The first two groups stand open: what a table is called by. */
const firstGroups = ({ design }: Bench): readonly string[] =>
  Object.values(design.params.fields)
    .slice(0, 2)
    .map(({ label }) => label);

function limitsOf({ design }: Bench, { piece, units }: View, path: string): ReturnType<typeof effectiveRange> {
  if (!piece) return undefined;
  const known = new Map(
    [...design.params.table.keys()].map((at) => [at, { value: valueAt(piece.values, at), unit: units }]),
  );
  return effectiveRange(design.params, known, path, known.get(path)!);
}

function showBroken(why: string | undefined): void {
  const place = document.getElementById('failed');
  if (place) place.textContent = why === undefined ? '' : `The design cannot be read at the moment: ${why}`;
}
