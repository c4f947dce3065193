/**
 * How the sheet looks, on screen and on paper: within 180 mm by 250 mm, which both A4 and Letter hold.
 */
export const SHEET_STYLE = `
@page { margin: 12mm 15mm; }
* { box-sizing: border-box; }
html { font: 9pt/1.35 "Helvetica Neue", Arial, "Liberation Sans", "DejaVu Sans", sans-serif; color: #1a1a1a; background: #fff; }
body { width: 180mm; margin: 8mm auto; }
@media print { body { margin: 0; } }
h1 { font-size: 17pt; line-height: 1.15; margin: 0 0 1mm; overflow-wrap: anywhere; }
h2 { font-size: 10.5pt; margin: 0 0 1.5mm; padding-top: 1.5mm; border-top: 0.3mm solid #1a1a1a; break-after: avoid; }
p, ul { margin: 0 0 1.5mm; }
ul { padding-left: 4mm; }
li { break-inside: avoid; }
header { margin-bottom: 3mm; }
section, figure { margin: 0 0 4mm; }
figure { break-inside: avoid; }
figure svg { display: block; margin: 0 auto; max-width: none; }
figcaption { font-size: 8pt; margin-bottom: 1mm; }
.pictures { display: grid; grid-template-columns: repeat(3, 1fr); gap: 2mm; break-inside: avoid; }
.pictures img { width: 100%; display: block; }
.columns { display: grid; grid-template-columns: 1fr 1fr; gap: 6mm; align-items: start; }
table { border-collapse: collapse; width: 100%; font-size: 8pt; font-variant-numeric: tabular-nums; }
th, td { padding: 0.4mm 1.5mm 0.4mm 0; text-align: left; vertical-align: top; border-bottom: 0.1mm solid #b8b8b8; }
th { font-weight: 600; border-bottom: 0.2mm solid #1a1a1a; }
table, tr { break-inside: avoid; }
thead { display: table-header-group; }
.own td { font-weight: 600; }
.number { text-align: right; }
.failed { color: #b3261e; font-weight: 600; }
.fine { font-size: 7.5pt; columns: 2; column-gap: 6mm; }
footer { font-size: 7pt; color: #444; border-top: 0.1mm solid #b8b8b8; padding-top: 1mm; overflow-wrap: anywhere; }
`;
