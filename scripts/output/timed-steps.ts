import { setImmediate as nextTurn } from 'node:timers/promises';
import type { Step as BuildStep } from 'tablewright';

export interface TimedStep {
  readonly name: string;
  readonly seconds: number;
}

/** The steps of a build with their times. */
export interface TimedSteps {
  readonly done: readonly TimedStep[];
  /** For the library: times its steps, and lets signals in between them. */
  readonly onStep: (step: BuildStep) => Promise<void>;
  /** Runs a step of our own. */
  run<T>(name: string, step: () => T): Promise<T>;
}

/** Tells each step when it is done. */
export function timedSteps(tell: (step: TimedStep) => void): TimedSteps {
  const done: TimedStep[] = [];
  let started = 0;
  const onStep = async ({ name, phase }: BuildStep): Promise<void> => {
    if (phase === 'end') {
      const step = { name, seconds: (performance.now() - started) / 1000 };
      done.push(step);
      tell(step);
    }
    await nextTurn();
    started = performance.now();
  };
  const run = async <T>(name: string, step: () => T): Promise<T> => {
    await onStep({ name, phase: 'start' });
    const value = step();
    await onStep({ name, phase: 'end' });
    return value;
  };
  return { done, onStep, run };
}
