import type { SceneData } from '../derive/scene/scene-data.ts';
import { sceneOf } from '../derive/scene/scene-of.ts';
import { defineSheets } from '../shop/sheets.ts';
import { defineSite } from '../shop/site.ts';
import { warningOf } from './forced.ts';
import type { Job } from './job.ts';
import { soundShapes } from './sound-shapes.ts';

/** What a preview shows of a job; made once for all outputs that ask. */
export function sceneOfJob(job: Job): SceneData {
  const known = scenes.get(job);
  if (known) return known;
  const { title, number, revision, date, units, site, sheets } = job.design;
  const { finish } = defineSheets(sheets);
  const words = { title, number, revision, date, units, finish, warning: warningOf(job) };
  const scene = sceneOf({ ...words, assembly: job.assembly, shapes: soundShapes(job), site: defineSite(site) });
  scenes.set(job, scene);
  return scene;
}

const scenes = new WeakMap<Job, SceneData>();
