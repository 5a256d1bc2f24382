import { setTimeout as sleep } from 'node:timers/promises';
import { EXIT } from '../exit.ts';
import { type ChildBuild, childBuild } from './child-build.ts';
import { fingerprint, type Watched } from './fingerprint.ts';

/** How often files are looked at, ms: looking finds renamed files and those on network drives, where events do not. */
const INTERVAL = 250;

export interface RebuildOptions {
  readonly watched: Watched;
  /** Of the build. */
  readonly args: readonly string[];
  readonly stop: AbortSignal;
  /** Called at each build, as it starts. */
  onBuild(): void;
  tell(text: string): void;
}

/** Builds at once and after every change, until it is stopped. A change during a build starts it over. */
export async function rebuildLoop({ watched, args, stop, onBuild, tell }: RebuildOptions): Promise<void> {
  let built = fingerprint(watched);
  let build = start(args, tell);
  onBuild();
  while (!stop.aborted) {
    await sleep(INTERVAL, undefined, { signal: stop }).catch(() => {});
    const seen = fingerprint(watched);
    if (stop.aborted || seen === built) continue;
    const settled = await settle(watched, seen, stop);
    build.stop();
    await build.ended;
    built = settled;
    tell('\nsomething changed');
    build = start(args, tell);
    onBuild();
  }
  build.stop();
  await build.ended;
}

/** Waits until nothing changes any more: an editor may write several files, or one in several steps. */
async function settle(watched: Watched, first: string, stop: AbortSignal): Promise<string> {
  let seen = first;
  for (;;) {
    await sleep(INTERVAL, undefined, { signal: stop }).catch(() => {});
    const now = fingerprint(watched);
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
