/** Does the work of a frame when there is some, once. */
export interface FrameLoop {
  /** In the next frame. */
  wake(): void;
  now(): void;
}

export function frameLoop(work: () => void): FrameLoop {
  let waiting = 0;
  const now = (): void => {
    cancelAnimationFrame(waiting);
    waiting = 0;
    work();
  };
  return {
    now,
    wake() {
      waiting ||= requestAnimationFrame(now);
    },
  };
}

/** Once what is there now has been painted. */
export const afterPaint = (then: () => void): void => {
  requestAnimationFrame(() => setTimeout(then, 0));
};
