/** The look of the page of findings: one column, black on white, tables that become lists on a phone; nothing is loaded. */
export const FINDINGS_STYLE = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 60rem; padding: 1.5rem; font: 1rem/1.45 system-ui, sans-serif; color: #1a1a1a; background: #fff; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 .25rem; }
h2 { font-size: 1.3rem; margin: 2.2rem 0 .6rem; padding: .3rem .6rem; border-left: .5rem solid; background: #f4f2ee; }
h3 { font-size: 1.08em; margin: 1.4rem 0 .3rem; }
p, ul, dl { margin: .4rem 0; }
.sub { color: #4a4a4a; }
.sum { font-size: 1.15rem; font-weight: 600; margin: .9rem 0 .4rem; }
.warning { border: 3px solid #8c1d18; padding: .6rem .8rem; font-weight: 600; }
.change-it { border-color: #8c1d18; }
.look-again { border-color: #a86a00; }
.not-checked { border-color: #3d5a80; }
.ok { border-color: #3f6b3f; }
table { width: 100%; border-collapse: collapse; margin: .4rem 0; }
th, td { text-align: left; vertical-align: top; padding: .35rem .5rem; border-bottom: 1px solid #cfcac0; }
thead th { border-bottom: 2px solid #1a1a1a; font-size: .85rem; }
tbody th { font-weight: normal; }
.number { width: 7.5rem; }
.mend { width: 34%; }
td ul { margin: 0; padding-left: 1.1rem; }
dl { display: grid; grid-template-columns: 13rem 1fr; gap: .1rem .8rem; margin-bottom: 1rem; font-size: .88em; color: #3a3a3a; }
dt { font-weight: 600; }
dd { margin: 0; }
.brief h3 { margin: .9rem 0 .1rem; }
.brief thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
.brief th, .brief td { padding: .15rem .5rem; font-size: .95em; }
.brief dl { display: block; margin: .2rem 0 .9rem; padding-left: .5rem; }
.brief dt, .brief dd { display: inline; }
.brief dt::after { content: ": "; white-space: pre; }
.brief dd::after { content: ". "; white-space: pre-wrap; }
nav ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: .3rem 1.2rem; }
a { color: #1d4e89; }
@media (max-width: 40rem) {
  body { padding: 1rem; }
  thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  table, tbody, tr, th, td { display: block; width: auto; }
  tr { border-bottom: 1px solid #cfcac0; padding: .5rem 0; }
  th, td, .number, .mend { border: 0; padding: .1rem 0; width: auto; }
  td:empty { display: none; }
  td[data-head]::before { content: attr(data-head) ": "; font-weight: 600; }
  dl { grid-template-columns: 1fr; }
  dd + dt { margin-top: .3rem; }
}
@media print {
  @page { margin: 15mm; }
  html { font-size: 9.5pt; }
  body { max-width: none; padding: 0; }
  th, td { padding: .2rem .4rem; }
  .brief { font-size: .85rem; }
  .brief h3 { margin-top: .5rem; }
  .brief th, .brief td { padding: .08rem .4rem; }
  .brief dl { margin: .1rem 0 .3rem; }
  h2, h3 { break-after: avoid; }
  tr, dl, .warning { break-inside: avoid; }
  nav { display: none; }
  a { color: inherit; text-decoration: none; }
}
`;
