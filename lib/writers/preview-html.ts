import { packScene } from '../derive/scene/pack-scene.ts';
import type { SceneData } from '../derive/scene/scene-data.ts';
import { formatInches, formatMm, type UnitSystem } from '../units/format-length.ts';
import { scriptText } from './bench/script-text.ts';
import { PREVIEW_STYLE } from './preview/preview-style.ts';
import { escapeXml } from './svg/xml.ts';

/** What the page for the client is made of. */
export interface PreviewPage {
  readonly scene: SceneData;
  /** Still pictures as SVG, the whole piece first. */
  readonly stills: readonly { readonly caption: string; readonly svg: string }[];
  /** The bundled script that shows the scene. */
  readonly script: string;
}

/** What a picture of wood can promise, in words. */
const SKETCH =
  'A sketch of form, not of grain: shape and sizes are those of the drawing, but color, grain and figure are made up. ' +
  'Every board is its own, and wood darkens or fades with the years. Chairs and people only show the scale.';

/**
 * One page of HTML to send by mail: the piece to turn about, what is agreed in words, and still pictures to print or for a
 * browser without 3-D. It asks for nothing else; its own policy forbids it.
 */
export function previewHtml({ scene, stills, script }: PreviewPage): string {
  const { words } = scene;
  const sub = [
    ...(words.number === undefined ? [] : [`no. ${words.number}`]),
    `revision ${words.revision}`,
    words.date,
  ].join(', ');
  return [
    '<!DOCTYPE html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'; img-src data:">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeXml(words.title)}</title>`,
    '<link rel="icon" href="data:,">',
    `<style>${PREVIEW_STYLE}</style>`,
    '</head>',
    `<body data-units="${scene.units}">`,
    '<header>',
    `<p class="sub">${escapeXml(sub)}</p>`,
    `<h1>${escapeXml(words.title)}</h1>`,
    ...(words.warning === undefined ? [] : [`<p class="warning">${escapeXml(sentence(words.warning))}</p>`]),
    '</header>',
    '<main>',
    '<section class="show" aria-label="the piece in three dimensions" hidden>',
    '<div class="stage" id="stage"></div>',
    tools(scene),
    '<p class="hint" id="hint">Drag to turn, pinch or wheel to come nearer, two fingers or shift to move. Keys: arrows, + and −, 1 to 4 for the views.</p>',
    '</section>',
    '<section class="facts" aria-label="what it is">',
    ...facts(scene),
    `<p class="sketch">${SKETCH}</p>`,
    '</section>',
    '<section class="stills" aria-labelledby="stills">',
    '<h2 id="stills">Still pictures</h2>',
    '<div class="sheet">',
    ...stills.map(
      ({ caption, svg }) => `<figure>${svg.trimEnd()}<figcaption>${escapeXml(caption)}</figcaption></figure>`,
    ),
    '</div>',
    '</section>',
    '</main>',
    `<script type="application/json" id="scene">${scriptText(packScene(scene).replaceAll('<', '\\u003c'))}</script>`,
    `<script>${scriptText(script)}</script>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

const sentence = (text: string): string => `${text[0]!.toUpperCase()}${text.slice(1)}.`;

/** Says the same in both systems; the script shows one of them. */
const both = (shown: UnitSystem, say: (units: UnitSystem) => string): string =>
  (['in', 'mm'] as const)
    .map((units) => `<span data-units="${units}"${units === shown ? '' : ' hidden'}>${escapeXml(say(units))}</span>`)
    .join('');

function facts({ words, overall, units, seats }: SceneData): string[] {
  const size = (mm: number, system: UnitSystem): string =>
    system === 'in' ? formatInches(mm, { denominator: 16 }) : formatMm(mm, 0);
  const rows: readonly (readonly [string, string])[] = [
    ['Length', both(units, (u) => size(overall.length, u))],
    ['Width', both(units, (u) => size(overall.width, u))],
    ['Height', both(units, (u) => size(overall.height, u))],
    ['Wood', escapeXml(words.wood)],
    ...(words.edge[units] === '' ? [] : [['Edges', both(units, (u) => words.edge[u])] as const]),
    ['Finish', escapeXml(words.finish)],
    ...(seats.length === 0 ? [] : [['Places', String(seats.length)] as const]),
  ];
  return [
    '<dl>',
    ...rows.map(([name, value]) => `<div><dt>${name}</dt><dd>${value}</dd></div>`),
    '</dl>',
    ...words.description[units].map((_, k) => `<p>${both(units, (u) => words.description[u][k]!)}</p>`),
  ];
}

function tools({ units, seats }: SceneData): string {
  const view = (name: string, label: string, on = false): string =>
    `<button type="button" data-view="${name}" aria-pressed="${on}">${label}</button>`;
  const toggle = (name: string, label: string): string =>
    `<button type="button" data-toggle="${name}" aria-pressed="false">${label}</button>`;
  const unit = (name: UnitSystem): string =>
    `<button type="button" data-unit="${name}" aria-pressed="${name === units}">${name}</button>`;
  const turn = (by: string, label: string, sign: string): string =>
    `<button type="button" data-turn="${by}" aria-label="${label}">${sign}</button>`;
  return [
    '<div class="tools">',
    '<div role="group" aria-label="view">',
    view('whole', 'Whole', true),
    view('end', 'End'),
    view('underside', 'Underside'),
    view('joints', 'Joints open'),
    '</div>',
    '<div role="group" aria-label="show">',
    toggle('dimensions', 'Sizes'),
    ...(seats.length === 0 ? [] : [toggle('seats', 'Chairs')]),
    toggle('people', 'People'),
    '</div>',
    '<div role="group" aria-label="units">',
    unit('in'),
    unit('mm'),
    '</div>',
    '<div role="group" aria-label="turn" class="turn">',
    turn('left', 'turn to the left', '←'),
    turn('right', 'turn to the right', '→'),
    turn('up', 'look from higher', '↑'),
    turn('down', 'look from lower', '↓'),
    turn('near', 'nearer', '+'),
    turn('far', 'farther', '−'),
    '</div>',
    '</div>',
  ].join('');
}
