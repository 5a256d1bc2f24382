import { readParam } from '../../params/read-param.ts';
import { valueAt } from '../../params/values.ts';
import type { BoardsDesk } from '../worker/ask-boards.ts';
import type { BoardsAnswer, BoardsTold, Setting } from '../worker/messages.ts';
import type { Bench } from './bench.ts';
import { button, el, onlyWhenNew, refill, setText } from './dom.ts';
import type { Piece } from './piece.ts';
import { tableOf } from './table-of.ts';
import type { Hands, Panel, View } from './view.ts';

/** Quiet after which the boards are planned again, ms: not at every step of a drag, and not before the page is read. */
const QUIET = 400;

/** What the status line says of an answer. */
const STATUS: { readonly [K in BoardsAnswer['kind']]: string } = {
  searching: 'A plan; whether there is a better one is being looked for.',
  mending: 'No plan; what would mend that is being looked for.',
  done: 'The strips of this top, from the left edge.',
  failed: 'The boards could not be planned',
};

/** Which of the boards beside the design goes to which strip of the piece as it is tried. */
export function boardsPanel(bench: Bench, desk: BoardsDesk, hands: Hands): Panel {
  const status = el('p', { class: 'working', role: 'status' });
  const body = el('div', { class: 'boards-body' });
  let asked: Pick<View, 'piece' | 'units'> = { piece: undefined, units: 'in' };
  let timer: ReturnType<typeof setTimeout> | undefined;
  let answer: BoardsAnswer | undefined;
  let told: BoardsTold | undefined;
  const fill = onlyWhenNew(({ now, isDrawn }: { readonly now: BoardsTold | undefined; readonly isDrawn: boolean }) => {
    refill(body, now ? contents(now, isDrawn, hands) : []);
  });
  const show = (): void => {
    setText(status, statusText(answer, told));
    status.classList.toggle('pending', answer?.kind !== 'done' && answer?.kind !== 'failed');
    body.classList.toggle('before', answer === undefined);
    const isDrawn = !told?.joints || !asked.piece || isAsDrawn(bench, asked.piece, told.joints);
    fill({ now: told, isDrawn });
  };
  const hear = (next: BoardsAnswer): void => {
    answer = next;
    if (next.kind === 'mending') told = undefined;
    if (next.kind === 'searching' || next.kind === 'done') told = next.told;
    show();
  };
  return {
    element: el(
      'section',
      { class: 'boards', 'aria-labelledby': 'boards' },
      el('h2', { id: 'boards' }, 'Boards'),
      status,
      body,
    ),
    update({ piece, units }) {
      if (!piece || (piece === asked.piece && units === asked.units)) return;
      asked = { piece, units };
      answer = undefined;
      const { shop, records } = bench;
      desk.forget();
      clearTimeout(timer);
      timer = setTimeout(() => desk.ask({ values: piece.values, units, shop, records }, hear), QUIET);
      show();
    },
  };
}

function statusText(answer: BoardsAnswer | undefined, told: BoardsTold | undefined): string {
  if (!answer) return told ? 'Of the last piece; the strips are being planned again.' : 'The strips are being planned.';
  if (answer.kind === 'failed') return `${STATUS.failed}: ${answer.because}.`;
  if (answer.kind === 'done' && !told) return 'This piece has no top of strips to plan.';
  if (answer.kind === 'done' && !told?.table) return 'These boards do not make this top.';
  return STATUS[answer.kind];
}

function contents({ lines, table, joints }: BoardsTold, isDrawn: boolean, hands: Hands): HTMLElement[] {
  return [
    ...lines.map((line) => el('p', {}, line)),
    ...(table ? [tableOf(table, 'boards')] : []),
    ...(joints && !isDrawn ? [drawLine(joints, hands)] : []),
  ];
}

const drawLine = ({ path, text }: Setting, hands: Hands): HTMLElement =>
  el(
    'p',
    { class: 'fix' },
    `The joints of these boards: ${text}`,
    button('draw the piece with them', () => hands.set(path, text), { 'data-key': 'joints' }),
  );

/** Whether the piece has these joints, or knows no such parameter. */
function isAsDrawn({ design }: Bench, { values }: Piece, { path, text }: Setting): boolean {
  const param = design.params.table.get(path);
  if (!param) return true;
  return JSON.stringify(readParam(param, text).value) === JSON.stringify(valueAt(values, path));
}
