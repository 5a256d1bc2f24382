/** Speed side by side, in one run: medians of warm rounds, and how many times slower the other ways are. */
import { solidsBench } from './solids-bench.ts';

for (const bench of [solidsBench]) console.log(`${await bench()}\n`);
