/** @module How the record looks on screen and on A4: a drawing office's sheet, black on paper, ruled lines, no colour needed. */

export const pageStyle = `
@page { size: A4; margin: 16mm 14mm 18mm; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 12mm 10mm; max-width: 210mm; background: #fff; color: #16202b;
  font: 10.5pt/1.45 "Atkinson Hyperlegible Next", "Liberation Sans", Arial, sans-serif; }
h1 { margin: 0 0 4mm; padding-bottom: 2mm; border-bottom: 0.6mm solid #16202b; font-size: 19pt; line-height: 1.2; }
h2 { margin: 9mm 0 2mm; font-size: 13pt; border-bottom: 0.25mm solid #16202b; break-after: avoid; }
p { margin: 0 0 2mm; max-width: 165mm; }
dl.plate { display: grid; grid-template-columns: 34mm 1fr; margin: 0; border: 0.4mm solid #16202b; }
dl.plate dt, dl.plate dd { margin: 0; padding: 1mm 2.5mm; border-bottom: 0.15mm solid #7b8794; overflow-wrap: anywhere; }
dl.plate dt { font-weight: 700; border-right: 0.15mm solid #7b8794; }
dl.plate dt:last-of-type, dl.plate dd:last-of-type { border-bottom: 0; }
.sheet { overflow-x: auto; }
table { width: 100%; border-collapse: collapse; font-size: 8.6pt; line-height: 1.35; font-variant-numeric: tabular-nums; }
thead { display: table-header-group; }
th, td { padding: 0.8mm 1.6mm; border: 0.15mm solid #7b8794; text-align: left; vertical-align: top; overflow-wrap: break-word; }
th { border-bottom: 0.4mm solid #16202b; overflow-wrap: normal; }
tr { break-inside: avoid; }
tr.marked td { font-weight: 700; }
tr.marked td:first-child::before { content: "\\25b6\\00a0"; }
figure { margin: 4mm 0; break-inside: avoid; }
figure svg { display: block; width: 100%; height: auto; max-height: 110mm; }
.pictures { display: grid; grid-template-columns: repeat(auto-fill, minmax(78mm, 1fr)); gap: 2mm 6mm; align-items: end; }
figure.picture img { display: block; width: auto; height: auto; max-width: 100%; max-height: 95mm; }
figcaption { font-size: 8.6pt; }
.safety { border: 0.6mm solid #16202b; padding: 2mm 4mm; margin-top: 8mm; break-inside: avoid; }
.safety h2 { margin-top: 1mm; border: 0; }
.signs { display: grid; grid-template-columns: 1fr 1fr; gap: 10mm; margin-top: 14mm; break-inside: avoid; }
.signs div { border-top: 0.25mm solid #16202b; padding-top: 1mm; font-size: 8.6pt; }
.hash { font: 8.6pt/1.5 "Liberation Mono", "DejaVu Sans Mono", monospace; overflow-wrap: anywhere; }
@media print { body { max-width: none; padding: 0; } .sheet { overflow: visible; } }
`;
