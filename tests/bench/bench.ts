/** Speed side by side, in one run: medians of warm rounds, and how many times slower the other ways are. */
import { checksBench } from './checks-bench.ts';
import { cutPlanBench } from './cut-plan-bench.ts';
import { pageBench } from './page-bench.ts';
import { solidsBench } from './solids-bench.ts';
import { stripPlanBench } from './strip-plan-bench.ts';
import { viewsBench } from './views-bench.ts';

for (const bench of [solidsBench, checksBench, viewsBench, pageBench, stripPlanBench, cutPlanBench])
  console.log(`${await bench()}\n`);
