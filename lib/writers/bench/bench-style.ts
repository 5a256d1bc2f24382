/**
 * The look of the live page: paper and ink, large enough to be read at arm's length, controls that a thumb finds. One
 * column on a phone with picture and summary in sight; beside each other where there is room. Nothing is loaded.
 */
export const BENCH_STYLE = `
:root { color-scheme: light; --ink: #1c1a17; --soft: #55504a; --line: #c9c2b6; --paper: #fbfaf7; --shade: #f0ede6; --moved: #fff0c2; --red: #8c1d18; --amber: #8a5600; --blue: #2f4f74; --green: #33603a; }
* { box-sizing: border-box; }
[hidden] { display: none !important; }
html { font: 17px/1.4 system-ui, sans-serif; color: var(--ink); background: var(--paper); }
body { margin: 0; }
.head { padding: .6rem 1rem; display: flex; flex-wrap: wrap; gap: 0 1rem; align-items: baseline; border-bottom: 1px solid var(--line); }
h1 { font-size: 1.3rem; margin: 0; }
h2 { font-size: 1.15rem; margin: 0 0 .5rem; }
h3 { font-size: 1rem; margin: 1rem 0 .3rem; padding: .1rem .5rem; border-left: .45rem solid; background: var(--shade); }
p { margin: .25rem 0; }
.sub, .hint, .path, .was, .note, .again, .working { color: var(--soft); }
.failed:not(:empty) { margin: 0; padding: .6rem 1rem; border-top: 3px solid var(--red); font-weight: 600; position: sticky; bottom: 0; background: var(--paper); }
button, input, select, textarea { font: inherit; color: inherit; }
button { min-height: 2.4rem; padding: .2rem .7rem; border: 1px solid #8b857b; border-radius: .3rem; background: #fff; cursor: pointer; }
button:hover:not(:disabled, [aria-pressed="true"]) { background: var(--shade); }
button:disabled { color: #6f6a63; background: var(--shade); cursor: default; }
button[aria-pressed="true"] { background: var(--ink); color: #fff; border-color: var(--ink); }
:focus-visible { outline: 3px solid #1d5fa8; outline-offset: 1px; }
input[type="text"], select { width: 100%; min-height: 2.5rem; padding: .2rem .5rem; border: 1px solid #8b857b; border-radius: .3rem; background: #fff; font-size: 1.1rem; }
input[type="checkbox"] { width: 1.6rem; height: 1.6rem; margin: .3rem 0; accent-color: var(--ink); }
input[type="range"] { width: 100%; height: 2.2rem; margin: 0; accent-color: var(--ink); touch-action: pan-y; }
textarea { width: 100%; padding: .4rem; font: .9rem/1.4 ui-monospace, monospace; border: 1px solid var(--line); background: #fff; }
table { border-collapse: collapse; width: 100%; }
caption { text-align: left; font-weight: 600; padding-top: .5rem; }
th, td { text-align: left; vertical-align: top; padding: .25rem .5rem; border-bottom: 1px solid var(--line); }
thead th { font-size: .85rem; border-bottom: 2px solid var(--ink); }
tbody th { font-weight: normal; }
th.right, td.right { text-align: right; font-variant-numeric: tabular-nums; }
.spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.buttons { display: flex; flex-wrap: wrap; gap: .4rem; margin: .6rem 0; }
table.before-after { table-layout: fixed; }
.before-after th:first-child { width: 50%; }
tr.moved td, td.moved, th.moved { background: var(--moved); }
.was { display: block; font-size: .85rem; }

.sight { background: var(--paper); z-index: 2; border-bottom: 1px solid var(--line); }
.scene-box { position: relative; height: 25vh; min-height: 9rem; background: #f3f1ec; overflow: hidden; }
.scene-box.stale { opacity: .45; }
.scene, .scene canvas { display: block; width: 100%; height: 100%; }
.scene { position: absolute; inset: 0; touch-action: none; cursor: grab; }
.scene:focus-visible { outline-offset: -3px; }
.scene-labels { position: absolute; inset: 0; pointer-events: none; overflow: hidden; }
.scene-label { position: absolute; left: 0; top: 0; padding: 0 .25rem; background: #ffffffd9; font-size: .85rem; white-space: nowrap; }
.scene-absent { padding: .6rem 1rem; }
.tools { display: flex; gap: .3rem; padding: .3rem .5rem; overflow-x: auto; }
.tools button { min-height: 2.1rem; padding: .1rem .55rem; white-space: nowrap; flex: none; font-size: .9rem; }
.tools .turner { min-width: 2.1rem; }
.summary { display: flex; flex-wrap: wrap; gap: .2rem 1rem; justify-content: space-between; align-items: center; padding: .35rem 1rem; background: var(--paper); }
.telling { flex: 1 1 14rem; }
.figures { font-size: 1.1rem; font-weight: 600; font-variant-numeric: tabular-nums; }
.verdicts { display: flex; flex-wrap: wrap; gap: .1rem .9rem; }
.count { padding-left: .45rem; border-left: .4rem solid; }
.change-it { border-color: var(--red); }
.look-again { border-color: #c07a00; }
.not-checked { border-color: var(--blue); }
.ok { border-color: var(--green); }
.count.pending { border-color: var(--line); color: var(--soft); }
.doing { display: flex; gap: .3rem; margin-left: auto; }
.units { display: flex; }
.units button:first-child { border-radius: .3rem 0 0 .3rem; }
.units button:last-child { border-radius: 0 .3rem .3rem 0; border-left: 0; }

.values, .results { padding: .8rem 1rem; }
.results > section { margin-bottom: 1.8rem; }
.problems { border: 3px solid var(--red); border-radius: .3rem; padding: .4rem .6rem; margin-bottom: .8rem; }
.how-it-ends { font-weight: 600; }
.lead { display: block; width: 100%; text-align: left; margin-top: .3rem; height: auto; }
.group { border: 1px solid var(--line); border-radius: .3rem; margin-bottom: .4rem; background: #fff; }
.group > summary { padding: .5rem .7rem; min-height: 2.6rem; cursor: pointer; font-weight: 600; }
.group[data-wrong] > summary { border-left: .4rem solid var(--red); }
.note { float: right; font-weight: normal; }
fieldset { border: 0; margin: 0; padding: 0 .7rem .5rem; min-width: 0; }
.field { padding: .55rem .4rem; border-top: 1px solid var(--line); display: grid; grid-template-columns: minmax(7.5rem, 2fr) 3fr; gap: .1rem .7rem; align-items: center; }
.field label { grid-column: 1 / -1; font-weight: 600; }
.field .path { grid-column: 1 / -1; font-size: .8rem; }
.field.unsliding input[type="text"], .field.of-choice select, .field.of-text input, .field.of-lengths input, .field.of-flag input { grid-column: 1 / -1; }
.field .hint, .moved-from, .field-problems { grid-column: 1 / -1; font-size: .9rem; }
.field .now { color: var(--ink); }
.field.moved { background: var(--moved); }
.field.wrong { box-shadow: inset .4rem 0 var(--red); padding-left: .9rem; }
.field.wrong input, .field.wrong select { border: 2px solid var(--red); }
.field.moved .hint, .field.moved .path, .moved .was, tr.moved .was { color: #4a453e; }
.moved-from { display: flex; flex-wrap: wrap; gap: .5rem; align-items: center; }
.moved-from button, .take, .fix button { min-height: 2.1rem; padding: .05rem .6rem; }
.problem { color: var(--red); margin: .25rem 0; font: .9rem/1.35 ui-monospace, monospace; overflow-wrap: anywhere; }
.count.problem { margin: 0; border-color: var(--red); font: inherit; font-weight: 600; }
.problem p { margin: 0 0 .1rem; }
.problem p + p { padding-left: 1.5rem; }
.findings ul { list-style: none; margin: 0; padding: 0; }
.findings li { padding: .45rem 0; border-bottom: 1px solid var(--line); }
.findings .before { color: #5f5a53; font-style: italic; }
.fix { display: flex; flex-wrap: wrap; gap: .5rem; align-items: center; padding-left: 1rem; }
.findings summary { cursor: pointer; font-size: .9rem; color: var(--soft); padding: .15rem 0; width: fit-content; }
.findings details p { font-size: .9rem; padding-left: 1rem; }
.working.pending { font-weight: 600; color: var(--ink); }
.advice { margin-top: .8rem; font-size: .9rem; color: var(--soft); }
.warning { margin: 0; padding: .4rem 1rem; border-bottom: 3px solid var(--red); font-weight: 600; }
.wide { overflow-x: auto; }
.wide th, .wide td { white-space: nowrap; }
.wide td:last-child { white-space: normal; min-width: 16rem; }

@media (min-height: 34rem) { .sight { position: sticky; top: 0; } }
@media (max-height: 33.99rem) { .summary { position: sticky; top: 0; z-index: 2; } }
@media (max-width: 61.99rem) {
  .field .path { display: none; }
  .summary { padding: .15rem .6rem .3rem; }
  .summary button { min-height: 2.1rem; padding: .1rem .55rem; font-size: .9rem; }
  .figures { font-size: 1rem; }
  .verdicts { font-size: .95rem; }
}
@media (min-width: 62rem) {
  main { display: grid; grid-template-columns: 25rem minmax(0, 1fr); grid-template-rows: auto 1fr; }
  .values { grid-area: 1 / 1 / 3 / 2; position: sticky; top: 0; height: 100vh; overflow-y: auto; border-right: 1px solid var(--line); }
  .sight { grid-area: 1 / 2; }
  .results { grid-area: 2 / 2; }
  .scene-box { height: 46vh; }
  .tools { padding: .3rem 1rem; }
}
@media (min-width: 100rem) {
  main { grid-template-columns: 26rem minmax(0, 1fr) 40rem; grid-template-rows: 1fr; }
  .values { grid-area: 1 / 1; }
  .sight { grid-area: 1 / 2; align-self: start; border-bottom: 0; }
  .results { grid-area: 1 / 3; border-left: 1px solid var(--line); }
  .scene-box { height: 74vh; }
}
@media print { .sight, .values, .buttons { display: none; } }
`;
