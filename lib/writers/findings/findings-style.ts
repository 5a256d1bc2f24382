/** The look of the page of findings: one column, black on white, tables that become lists on a phone; nothing is loaded. */
export const FINDINGS_STYLE = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 60rem; padding: 1.5rem; font: 1rem/1.45 system-ui, sans-serif; color: #1a1a1a; background: #fff; }
h1 { font-size: 1.7rem; line-height: 1.2; margin: 0 0 .25rem; }
h2 { font-size: 1.3rem; margin: 2.2rem 0 .6rem; padding: .3rem .6rem; border-left: .5rem solid; background: #f4f2ee; }
h3 { font-size: 1.05rem; margin: 1.4rem 0 .3rem; }
p, ul, dl { margin: .4rem 0; }
.sub { color: #4a4a4a; }
.sum { font-size: 1.15rem; font-weight: 600; }
.warning { border: 3px solid #8c1d18; padding: .6rem .8rem; font-weight: 600; }
.change-it { border-color: #8c1d18; }
.look-again { border-color: #a86a00; }
.not-checked { border-color: #3d5a80; }
.ok { border-color: #3f6b3f; }
table { width: 100%; border-collapse: collapse; margin: .4rem 0; }
th, td { text-align: left; vertical-align: top; padding: .35rem .5rem; border-bottom: 1px solid #cfcac0; }
thead th { border-bottom: 2px solid #1a1a1a; font-size: .85rem; }
tbody th { font-weight: normal; }
.number { white-space: nowrap; width: 8.5rem; }
.mend { width: 32%; }
td ul { margin: 0; padding-left: 1.1rem; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: .1rem .8rem; font-size: .88rem; color: #3a3a3a; }
dt { font-weight: 600; }
dd { margin: 0; }
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
  body { max-width: none; padding: 0; font-size: 10pt; }
  h2, h3 { break-after: avoid; }
  tr, dl, .warning { break-inside: avoid; }
  nav { display: none; }
  a { color: inherit; text-decoration: none; }
}
`;
