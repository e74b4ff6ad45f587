import { CAUTION_SIZES_PT } from './room';
import { WIDTH_STYLE } from './widths';

/** The cautions are the one thing that gives way where there is much to say. */
export const cautionClass = (pt: number): string => `pt${String(pt).replace('.', '-')}`;

/**
 * Black on white, 190 by 259 mm: what is left of A4 and of Letter inside margins of 10 mm. Text is 12 pt, grams are 28 pt. The same text for every
 * sheet, whatever stands on it: the page's policy names it by its hash.
 */
export const POUR_STYLE = `
@page{margin:10mm}
*{box-sizing:border-box}
html{color:#000;background:#fff;font:12pt/1.17 "Liberation Sans",Arial,Helvetica,sans-serif}
body{margin:0}
article{width:190mm;height:259mm;display:flex;flex-direction:column;justify-content:space-between;overflow:hidden}
@media screen{body{padding:10mm}article{margin:0 auto}}
h1{font-size:16pt;margin:0;overflow:hidden;text-overflow:ellipsis;white-space:nowrap;max-width:120mm}
h2{font-size:12pt;margin:0 0 .6mm;border-bottom:.5mm solid #000}
p,ul,ol{margin:0;padding:0}
header,footer{display:flex;justify-content:space-between;gap:4mm}
header p,footer span{overflow:hidden;text-overflow:ellipsis;white-space:nowrap;max-width:125mm}
.right{text-align:right}
.mixes{display:grid;gap:0 4mm;border:.5mm solid #000;padding:.8mm 2mm}
.mixes.two{grid-template-columns:1fr 1fr}
.mix{display:flex;align-items:baseline;gap:3mm;white-space:nowrap}
.mix b{font-size:28pt;line-height:1.1;font-variant-numeric:tabular-nums}
.mix i{font-style:normal;font-weight:bold;font-size:16pt}
table{border-collapse:collapse;width:100%}
th,td{text-align:left;padding:.5mm 1.2mm;border-bottom:.2mm solid #000;font-weight:normal;vertical-align:bottom}
thead th{font-weight:bold}
.read td,.read th{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}
.read th{text-align:left}
.aim{font-weight:bold}
.cols{display:grid;grid-template-columns:107mm 1fr;gap:0 5mm}
li{list-style:none;padding-left:5.6mm;text-indent:-5.6mm;margin-bottom:.5mm}
.box{display:inline-block;width:3.6mm;height:3.6mm;border:.4mm solid #000;margin-right:2mm;vertical-align:-.4mm;text-indent:0}
.blank{display:inline-block;border-bottom:.3mm solid #000;height:1em;vertical-align:baseline;text-indent:0}
.back{display:flex;justify-content:space-between;align-items:baseline;height:6.4mm;gap:2mm}
.clock td{height:6.6mm}
.before p{overflow:hidden;text-overflow:ellipsis;white-space:nowrap}
.stop{border:.7mm solid #000;padding:.6mm 1.5mm}
.cautions{line-height:1.14}
${CAUTION_SIZES_PT.map((pt) => `.${cautionClass(pt)}{font-size:${pt}pt}`).join('')}
${WIDTH_STYLE}
footer{border-top:.3mm solid #000;padding-top:.6mm;font-size:10pt}
`;
