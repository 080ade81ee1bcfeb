/** @module What the offer's page has beside the record's looks: plans side by side, and the form that accepts one. */

export const offerPageStyle = `
.letter { margin: 0 0 6mm; }
.letter p { margin: 0; }
.letter p:first-child { font-weight: 700; font-size: 12pt; }
td.sum { text-align: right; white-space: nowrap; }
tr.pay th, tr.pay td { border-top: 0.6mm solid #16202b; font-weight: 700; font-size: 10pt; }
table.plans { font-size: 9.6pt; }
table.plans tbody th { width: 42mm; border-bottom: 0.15mm solid #7b8794; }
table.work th[scope="row"] { width: 34mm; border-bottom: 0.15mm solid #7b8794; }
.why { display: block; color: #38434f; }
.notice { border: 0.8mm solid #16202b; padding: 3mm 4mm; margin: 0 0 5mm; font-weight: 700; }
form { border: 0.6mm solid #16202b; padding: 3mm 4mm; margin-top: 8mm; break-inside: avoid; }
form h2 { margin-top: 1mm; border: 0; }
fieldset { border: 0; margin: 0 0 3mm; padding: 0; }
legend { padding: 0; font-weight: 700; }
fieldset label { display: flex; gap: 3mm; align-items: center; min-height: 13mm; font-size: 12pt; }
fieldset input { width: 7mm; height: 7mm; flex: none; }
.name { display: block; margin-bottom: 3mm; font-weight: 700; }
.name input { display: block; width: 100%; max-width: 110mm; min-height: 13mm; margin-top: 1mm; padding: 1mm 3mm;
  font: inherit; font-weight: 400; border: 0.3mm solid #16202b; background: #fff; color: inherit; }
button { min-height: 13mm; padding: 2mm 8mm; font: inherit; font-weight: 700; font-size: 12pt; background: #16202b;
  color: #fff; border: 0; }
input:focus-visible, button:focus-visible { outline: 0.8mm solid #16202b; outline-offset: 0.8mm; }
.signs.three-signs { grid-template-columns: 1fr 1fr 1fr; }
@media print { form { display: none; } }
`;
