import { renderIssue } from '../../params/render-issue.ts';
import { button, el, onlyWhenNew, refill } from './dom.ts';
import { problemText } from './problem-text.ts';
import type { Panel, View } from './view.ts';

/** How it ends when something is wrong, where the command line says "nothing was written". */
const ENDING = 'shown is the last piece that went together';

/**
 * What is wrong, above all else: whole for what has no field, otherwise a button that leads to the field, where it says
 * the rest.
 */
export function problemsPanel(hasField: (path: string) => boolean, goTo: (path: string) => void): Panel {
  const element = el('section', {
    class: 'problems',
    id: 'problems',
    'aria-label': 'problems',
    tabindex: -1,
    hidden: true,
  });
  const fill = onlyWhenNew(({ texts, paths, failure }: Shown) => {
    element.hidden = texts.length === 0 && failure === undefined;
    const count = texts.length + (failure === undefined ? 0 : 1);
    refill(element, [
      el('p', { class: 'how-it-ends' }, `${count === 1 ? '1 problem' : `${count} problems`}; ${ENDING}`),
      failure !== undefined && problemText(`error: the piece cannot be put together\n${failure}`),
      ...texts.map((text, k) => {
        const path = paths[k]!;
        if (!hasField(path)) return problemText(text);
        return button(text.split('\n')[0]!.replace(/^error: /, ''), () => goTo(path), {
          'data-key': path,
          class: 'lead',
        });
      }),
    ]);
  });
  return {
    element,
    update({ issues, failure, units }: View) {
      const texts = issues.map((issue) => renderIssue(issue, units));
      fill({ texts, paths: issues.map(({ path }) => path), failure });
    },
  };
}

interface Shown {
  readonly texts: readonly string[];
  readonly paths: readonly string[];
  readonly failure: string | undefined;
}
