import type { BenchData } from '../../build/bench-data.ts';
import type { Design } from '../../build/design.ts';
import type { Shop } from '../../shop/shop.ts';
import { isWorker, serveFromWorker } from '../worker/in-worker.ts';
import { benchOf } from './bench.ts';
import { runBench } from './run-bench.ts';

/** Starts the live page of a design; in a worker, what makes its checks. Both run the same script. */
export function startBench(design: Design, shop?: Shop): void {
  if (isWorker()) {
    serveFromWorker(design);
    return;
  }
  const script = document.currentScript?.textContent ?? '';
  const data: BenchData = JSON.parse(document.getElementById('bench-data')!.textContent ?? '{}');
  nameThePage(design);
  runBench(benchOf(design, shop, data), script, document.getElementById('bench')!);
}

/** A page that is served does not know the design before its script runs. */
function nameThePage({ title, number, revision, date }: Design): void {
  document.title = `At the bench: ${title}`;
  const [name, sub] = [document.querySelector('h1'), document.querySelector('.sub')];
  if (name) name.textContent = title;
  if (sub)
    sub.textContent = [number === undefined ? [] : [`no. ${number}`], `revision ${revision}`, date].flat().join(', ');
}
