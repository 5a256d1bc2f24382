import { lookingFrom, type Picture, pictureOf } from '../derive/drawings/picture.ts';
import type { PlacedSolid } from '../derive/drawings/placed-solid.ts';
import { blankOf } from '../derive/solids/solid-of.ts';
import { add, type Vec3 } from '../geometry/vec.ts';
import { partOf, placeOf } from '../model/assembly.ts';
import type { Job } from './job.ts';
import { sceneOfJob } from './scene-of-job.ts';
import { soundShapes } from './sound-shapes.ts';

export type StillName = 'whole' | 'end' | 'underside' | 'joints';

/** The same directions as the views of the page, degrees to the right of the front and above the floor. */
const LOOKS = {
  whole: lookingFrom(32, 19),
  end: lookingFrom(90, 5),
  underside: lookingFrom(38, -30),
  joints: lookingFrom(36, 20),
} as const satisfies Record<StillName, ReturnType<typeof lookingFrom>>;

/** A still picture of a job, without a browser. */
export function still(job: Job, name: StillName): Picture {
  const known = stills.get(job) ?? new Map<StillName, Picture>();
  stills.set(job, known);
  const made = known.get(name) ?? makeStill(job, name);
  known.set(name, made);
  return made;
}

/** The page and the files beside it show the same. */
const stills = new WeakMap<Job, Map<StillName, Picture>>();

function makeStill(job: Job, name: StillName): Picture {
  const picture = pictureOf(name === 'joints' ? opened(job) : closed(job), LOOKS[name]);
  return name === 'underside' ? { ...picture, shadow: [] } : picture;
}

/** Tenons and what is cut inside a closed joint are not seen, and cost time. */
function closed(job: Job): PlacedSolid[] {
  const sound = soundShapes(job);
  return sceneOfJob(job)
    .parts.filter((part) => part.group !== 'tenon')
    .map(({ id, kind, frame }) => ({
      part: id,
      solid: kind === 'strip' ? blankOf(partOf(job.assembly, id)) : sound.get(id)!.solid,
      frame,
    }));
}

/** The strips of the top go apart without their many tenons and slots: the page that turns shows those. */
function opened(job: Job): PlacedSolid[] {
  const sound = soundShapes(job);
  const moved = ({ id, apart }: { id: string; apart: Vec3 }): PlacedSolid => {
    const frame = placeOf(job.assembly, id);
    const part = partOf(job.assembly, id);
    const solid = part.kind === 'strip' ? blankOf(part) : sound.get(id)!.solid;
    return { part: id, solid, frame: { ...frame, origin: add(frame.origin, apart) } };
  };
  const inTop = new Set(job.assembly.joints.filter((j) => j.kind === 'edge').flatMap((j) => j.tenons));
  return sceneOfJob(job)
    .parts.filter(({ id }) => !inTop.has(id))
    .map(moved);
}
