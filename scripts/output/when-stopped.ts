import { EXIT } from '../exit.ts';

const SIGNALS = { SIGINT: EXIT.stopped, SIGTERM: 143, SIGHUP: 129 } as const;

/** Tidies up and ends the process when it is told to stop; answers how to take that back. */
export function whenStopped(tidyUp: () => void): () => void {
  const names = Object.keys(SIGNALS) as (keyof typeof SIGNALS)[];
  const handler = (signal: keyof typeof SIGNALS): void => {
    tidyUp();
    process.exit(SIGNALS[signal]);
  };
  for (const name of names) process.on(name, handler as NodeJS.SignalsListener);
  return () => {
    for (const name of names) process.off(name, handler as NodeJS.SignalsListener);
  };
}
