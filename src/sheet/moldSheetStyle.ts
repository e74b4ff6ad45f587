import { POUR_STYLE } from './style';

/** The pour sheet's page, and what the section adds: lines alone, as print has no gray. */
export const MOLD_STYLE = `${POUR_STYLE}
.drawn{display:grid;grid-template-columns:120mm 1fr;gap:0 5mm;align-items:start}
figure{margin:0}
figcaption{line-height:1.15}
svg{display:block}
.section path{stroke:#000;stroke-width:.35;stroke-linejoin:round;fill-rule:nonzero}
.section pattern path{stroke-width:.2;fill:none}
.section .sculpt{fill:#fff}
.section .skin,.section .block{fill:url(#hatch-rubber)}
.section .jacket{fill:url(#hatch-jacket)}
.bar{display:flex;align-items:center;gap:2mm;margin:1mm 0}
.bar path{fill:none;stroke:#000;stroke-width:.3}
.ticks{white-space:nowrap}
.cautions{font-size:10pt}
`;
