import { glb } from '../writers/glb.ts';
import { threeMf } from '../writers/three-mf.ts';
import type { Job } from './job.ts';
import type { Files } from './output.ts';
import { sceneOfJob } from './scene-of-job.ts';

/** `model.glb`: the whole piece for 3-D viewers and for augmented reality. */
export const glbFile = async (job: Job): Promise<Files> => new Map([['model.glb', await glb(sceneOfJob(job))]]);

/** `solids/assembly.3mf`: the whole piece for printers of models; the format itself says millimetres. */
export const threeMfFile = (job: Job): Files => new Map([['solids/assembly.3mf', threeMf(sceneOfJob(job))]]);
