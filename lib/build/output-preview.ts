import { previewHtml } from '../writers/preview-html.ts';
import { stillPng } from '../writers/still-png.ts';
import { stillSvg } from '../writers/still-svg.ts';
import type { Assets } from './assets.ts';
import type { Job } from './job.ts';
import { type Files, textFile } from './output.ts';
import { sceneOfJob } from './scene-of-job.ts';
import { type StillName, still } from './stills.ts';

const CAPTIONS: { readonly [S in StillName]: string } = {
  whole: 'The whole piece',
  end: 'From the end',
  underside: 'From below',
  joints: 'With its joints open',
};

/** `preview.html`: the page for the client. */
export function previewFile(job: Job, { pages }: Assets): Files {
  const scene = sceneOfJob(job);
  const stills = (Object.keys(CAPTIONS) as StillName[]).map((name) => {
    const caption = CAPTIONS[name];
    return {
      caption,
      svg: stillSvg(still(job, name), scene, { title: `${scene.words.title}: ${caption.toLowerCase()}` }),
    };
  });
  return new Map([['preview.html', textFile(previewHtml({ scene, stills, script: pages.client }))]]);
}

/** `preview.svg` and `preview.png`: the whole piece in the color of its wood, without lettering, to put beside a text. */
export function stillFiles(job: Job): Files {
  const scene = sceneOfJob(job);
  const { title, warning, revision, date } = scene.words;
  const picture = still(job, 'whole');
  const texts = {
    Title: title,
    Description: `revision ${revision}, ${date}`,
    ...(warning === undefined ? {} : { Warning: warning }),
  };
  return new Map([
    ['preview.svg', textFile(stillSvg(picture, scene, { title, warning }))],
    ['preview.png', stillPng(picture, scene, texts)],
  ]);
}
