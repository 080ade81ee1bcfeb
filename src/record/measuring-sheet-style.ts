/** @module How the blank measuring sheet looks: boxes that a pencil fits in, black on paper, A4. */

export const measuringSheetStyle = `
@page { size: A4; margin: 12mm 12mm 16mm;
  @bottom-right { content: "sheet " counter(page) " of " counter(pages); font: 8pt sans-serif; } }
* { box-sizing: border-box; }
body { margin: 0; background: #fff; color: #16202b; font: 10pt/1.35 "Atkinson Hyperlegible Next", "Liberation Sans", Arial, sans-serif; }
main { max-width: 190mm; margin: 0 auto; padding: 8mm 4mm; }
h1 { margin: 0 0 2mm; font-size: 16pt; line-height: 1.2; border-bottom: 0.6mm solid #16202b; }
h2 { margin: 0; font-size: 11.5pt; }
.about { margin: 0 0 2mm; font-size: 8.8pt; }
.limits { margin: 0 0 1mm; font-size: 8.8pt; }
section { margin-top: 6mm; }
section > h2, section > p { break-after: avoid; }
.lines { display: flex; flex-wrap: wrap; gap: 1mm 5mm; margin: 1mm 0 1.5mm; font-size: 8.8pt; }
.line { display: flex; flex: 1 1 34mm; gap: 1.5mm; align-items: end; white-space: nowrap; }
.line b { flex: 1; min-width: 12mm; border-bottom: 0.2mm solid #16202b; overflow: hidden; text-overflow: ellipsis; }
table { width: 100%; border-collapse: collapse; table-layout: fixed; break-inside: auto; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { border: 0.25mm solid #16202b; padding: 0.6mm 1mm; text-align: left; vertical-align: top; overflow-wrap: break-word; }
th { font-size: 8.4pt; font-weight: 600; }
td { height: 9.5mm; }
.box { font-size: 7pt; color: #38434f; }
@media print { main { max-width: none; padding: 0; } }
`;
