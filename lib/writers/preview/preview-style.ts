/** The look of the page for the client: a bright room, the piece large, words beside or below it; nothing is loaded. */
export const PREVIEW_STYLE = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
[hidden] { display: none !important; }
body { margin: 0 auto; max-width: 90rem; padding: 1.2rem clamp(1rem, 3vw, 2.5rem) 2rem; font: 1rem/1.5 system-ui, sans-serif; color: #2a241e; background: #faf8f5; }
h1 { font: 600 clamp(1.6rem, 3.4vw, 2.5rem)/1.15 Georgia, 'Times New Roman', serif; margin: 0 0 .8rem; }
h2 { font: 600 1.35rem/1.2 Georgia, 'Times New Roman', serif; margin: 2rem 0 .8rem; }
p { margin: .5rem 0; }
.sub { margin: 0 0 .2rem; color: #675c50; font-size: .92rem; }
.warning { border: 3px solid #8c1d18; padding: .6rem .8rem; font-weight: 600; }
main { display: grid; grid-template-columns: minmax(0, 1fr) 19rem; gap: 0 2.2rem; align-items: start; }
.stage { position: relative; height: min(68vh, 46rem); border-radius: 10px; overflow: hidden; background: radial-gradient(ellipse at 50% 38%, #fdfcfa 0%, #f1ece4 62%, #e2dace 100%); }
.poster { position: absolute; inset: 8%; width: 84%; height: 84%; }
.scene { position: absolute; inset: 0; touch-action: none; cursor: grab; border-radius: 10px; }
.scene:active { cursor: grabbing; }
.scene:focus-visible { outline: 3px solid #1d4e89; outline-offset: -3px; }
.scene canvas { display: block; width: 100%; height: 100%; }
.scene-labels { position: absolute; inset: 0; pointer-events: none; overflow: hidden; }
.scene-label { position: absolute; left: 0; top: 0; padding: .05rem .45rem; border-radius: 4px; background: #fffdfae6; color: #2a241e; font-size: .88rem; font-weight: 600; white-space: nowrap; }
.tools { display: flex; flex-wrap: wrap; gap: .6rem .9rem; margin: .8rem 0 .2rem; }
.tools > div { display: flex; border: 1px solid #b9ad9c; border-radius: 8px; overflow: hidden; background: #fff; }
button { font: inherit; font-size: .93rem; min-height: 2.6rem; min-width: 2.6rem; padding: .2rem .8rem; border: 0; border-right: 1px solid #ddd4c7; background: #fff; color: #2a241e; cursor: pointer; }
button:last-child { border-right: 0; }
button[aria-pressed="true"] { background: #5d4330; color: #fff; }
button:focus-visible { outline: 3px solid #1d4e89; outline-offset: -3px; }
.hint { color: #675c50; font-size: .88rem; }
dl { margin: 0 0 1rem; border-top: 2px solid #5d4330; }
dl div { display: flex; gap: 1rem; padding: .42rem 0; border-bottom: 1px solid #ddd4c7; }
dt { flex: 0 0 4.6rem; color: #675c50; }
dd { margin: 0; font-weight: 600; }
.sketch { margin-top: 1rem; padding: .7rem .9rem; background: #f1ece4; border-radius: 8px; font-size: .92rem; }
.stills, .show { min-width: 0; }
.stills { grid-column: 1 / -1; }
.sheet { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 20rem), 1fr)); gap: 1.2rem; align-items: end; }
figure { margin: 0; break-inside: avoid; }
figure svg { display: block; width: 100%; height: auto; }
figcaption { text-align: center; color: #675c50; font-size: .92rem; margin-top: .4rem; }
.flat .facts { grid-column: 1 / -1; grid-row: 2; }
@media (max-width: 60rem) {
  main { display: block; }
  .facts { margin-top: 1.4rem; }
}
@media (max-width: 40rem) {
  body { padding: .9rem .9rem 1.6rem; }
  .stage { height: 54vh; height: 54svh; margin: 0 -.9rem; border-radius: 0; }
  .tools { gap: .5rem; }
  button { padding: .2rem .62rem; min-height: 2.75rem; min-width: 2.75rem; }
}
@media print {
  @page { margin: 14mm; }
  body { background: #fff; padding: 0; font-size: 10.5pt; }
  main { display: block; }
  .show { display: none !important; }
  .sheet { grid-template-columns: 1fr 1fr; }
  h2 { margin-top: 1rem; break-after: avoid; }
}
`;
