import { POUR_STYLE } from './style';

/** The pour sheet's page, and what the drawing and the table of places add. In a drawing a unit is a millimeter: 4.2334 are 12 pt. */
export const PLACE_STYLE = `${POUR_STYLE}
article{justify-content:flex-start;gap:1.5mm;break-after:page}
article:last-child{break-after:auto}
footer{margin-top:auto;font-size:12pt}
svg{display:block;flex:none}
svg text{font-size:4.2334px;fill:#000;stroke:none}
svg path,svg .ring,svg .arrow{fill:none;stroke:#000;stroke-width:.3}
svg .outline{stroke-width:.5;stroke-linejoin:round}
svg .base{stroke-width:.3}
svg .leader{stroke-width:.2}
svg .ring{fill:#fff}
svg .ring.opening{stroke-width:.7}
svg .ring.far,svg .leader.far{stroke-dasharray:1.2 .8}
svg .dot.far,svg .dot.unknown{fill:#fff;stroke:#000;stroke-width:.3}
svg path.arrow{stroke-width:.5}
.places{table-layout:fixed}
.places td,.places th{overflow-wrap:anywhere}
.places td{vertical-align:top}
.places .mm{white-space:nowrap;font-variant-numeric:tabular-nums}
`;
