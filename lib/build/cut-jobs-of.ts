import { type CutJob, cutJobs } from '../derive/lumber/cut-plan/cut-jobs.ts';
import { isTooWet } from '../derive/lumber/too-wet.ts';
import type { Board } from '../model/records.ts';
import { defineLumberWishes } from '../shop/lumber-wishes.ts';
import type { Job } from './job.ts';
import { ROUGH_STEP } from './rough-size.ts';

/** How all parts but the strips of the top are cut from boards that are dry and not spoken for. */
export function cutJobsOf(job: Job, boards: readonly Board[], spoken: readonly string[]): CutJob[] {
  const { shop, cutList, design } = job;
  const { matchPosts } = defineLumberWishes(design.lumber);
  return cutJobs(cutList, dryBoards(boards), {
    kerf: shop.lumber.kerf,
    step: ROUGH_STEP[design.units],
    without: (row) => row.kind === 'strip',
    together: (row) => (matchPosts && row.kind === 'post' ? row.name : undefined),
    spoken,
  });
}

/** Wet boards are told by a finding and left out. */
export const dryBoards = (boards: readonly Board[]): Board[] => boards.filter((board) => !isTooWet(board));
