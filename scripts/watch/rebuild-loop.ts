import { setTimeout as sleep } from 'node:timers/promises';
import { EXIT } from '../exit.ts';
import { type ChildBuild, childBuild } from './child-build.ts';
import { fingerprint } from './fingerprint.ts';

/** How often files are looked at, ms: looking finds renamed files and those on network drives, where events do not. */
const INTERVAL = 250;

export interface RebuildOptions {
  /** Files and folders to look at. */
  readonly places: readonly string[];
  /** Of the build. */
  readonly args: readonly string[];
  readonly stop: AbortSignal;
  tell(text: string): void;
}

/** Builds at once and after every change, until it is stopped. A change during a build starts it over. */
export async function rebuildLoop({ places, args, stop, tell }: RebuildOptions): Promise<void> {
  let built = fingerprint(places);
  let build = start(args, tell);
  while (!stop.aborted) {
    await sleep(INTERVAL, undefined, { signal: stop }).catch(() => {});
    const seen = fingerprint(places);
    if (stop.aborted || seen === built) continue;
    const settled = await settle(places, seen, stop);
    build.stop();
    await build.ended;
    built = settled;
    tell('\nsomething changed');
    build = start(args, tell);
  }
  build.stop();
  await build.ended;
}

/** Waits until nothing changes any more: an editor may write several files, or one in several steps. */
async function settle(places: readonly string[], first: string, stop: AbortSignal): Promise<string> {
  let seen = first;
  for (;;) {
    await sleep(INTERVAL, undefined, { signal: stop }).catch(() => {});
    const now = fingerprint(places);
    if (now === seen || stop.aborted) return now;
    seen = now;
  }
}

function start(args: readonly string[], tell: (text: string) => void): ChildBuild {
  const build = childBuild(args);
  void build.ended.then((code) => {
    if (code === undefined || code === EXIT.stopped) return;
    tell(code === EXIT.good ? 'waiting for a change; Ctrl-C ends' : 'waiting for it to be mended; Ctrl-C ends');
  });
  return build;
}
