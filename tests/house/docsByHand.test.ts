import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';
import { CHECK_FIGURES as C } from '../../src/checks';
import { RULES as R } from '../../src/yield';
import { DEMOLD_RULES as D } from '../../src/yield/demold/rules';
import { LEARN_RULES as L } from '../../src/yield/learn/rules';
import { MOLDMAKING_RULES as M } from '../../src/yield/moldmaking/rules';
import { POUR_RULES as P } from '../../src/yield/pour/rules';
import { RUN_RULES } from '../../src/yield/run/rules';

/** Defaults that stand in a sentence written by hand: the sentence is made here from the table of rules and looked for in the page. */

const root = resolve(import.meta.dirname, '../..');
const pages = new Map<string, string>();
/** Lines of a page are broken anywhere. */
function page(name: string): string {
  const text = pages.get(name) ?? readFileSync(join(root, 'docs', name), 'utf8').replace(/\s+/g, ' ');
  pages.set(name, text);
  return text;
}

const percent = (share: number): number => Number((100 * share).toPrecision(6));
const NUMBERS: Readonly<Record<number, string>> = { 5: 'five', 10: 'ten', 20: 'twenty' };
const { packFactor, packFine, packStopAbove, liquidDensity, openingShare } = R;

it.each([
  [
    'how-it-computes.md',
    `${packFactor.value.toFixed(2)}; Look outside ${packFine.low.toFixed(2)}-${packFine.high.toFixed(2)}, Stop above ${packStopAbove.value.toFixed(1)}, refused outside ${packFactor.low.toFixed(1)}-${packFactor.high.toFixed(1)}`,
  ],
  ['how-it-computes.md', `| vents | ${R.vents.value} g |`],
  ['how-it-computes.md', `ideal gas at ${R.gasTemperature.value} K`],
  ['how-it-computes.md', `| residue | ${R.residue.value} g, for a batch of about 1 kg |`],
  [
    'how-it-computes.md',
    `| liquid density | ${liquidDensity.value} kg/m³ (${liquidDensity.low}-${liquidDensity.high}) |`,
  ],
  [
    'how-it-computes.md',
    `| free-rise doubt | ${percent(R.uFreeRiseLabel.value)} % from a label, ${percent(R.uFreeRiseCup.value)} % from cup tests of the day |`,
  ],
  ['how-it-computes.md', `| scan to mold | ${percent(R.uScanToMold.value)} % of the cavity |`],
  ['how-it-computes.md', `at least ${percent(R.minSigmaNoCup.value)} % without a cup test`],
  ['how-it-computes.md', `never more than ${percent(R.roundUpMost.value)} % above`],
  ['how-it-computes.md', `whose ratio is within ${percent(R.ratioFine.value)} %`],
  ['pour.md', `${R.minClampPressure.value} kPa at least`],
  ['pour.md', `pressure × shadow × ${R.clampSafety.value} − lid`],
  ['pour.md', `1 + 3 δ S/V, and ${P.packMargin.value.toFixed(2)} on top as advice`],
  ['pour.md', `Under ${D.castingStop.value} mm Stop, under ${D.castingLook.value} mm Look`],
  [
    'opening.md',
    `${percent(openingShare.low)} % fine, ${percent(openingShare.value)} % advised, ${percent(openingShare.high)} % stop`,
  ],
  ['opening.md', `until none of ${C.trapSmall.value} cm³ is left`],
  ['opening.md', `within ${C.ceilingTilt.value}° of level`],
  ['opening.md', `c the foam's squash (${D.foamSquash.value}, common practice, no source)`],
  ['molds.md', `two people above ${C.heavyLift.value} kg`],
  ['learning.md', `0 to ${percent(L.balanceMost.value)} % missing is fine`],
  ['learning.md', `a room more than ${L.groupK.value} K away`],
  ['learning.md', `correlation is ${L.togetherR.value} or more`],
  ['learning.md', `${L.driftLeast.value} castings; before that dots`],
  ['learning.md', `a scatter of ${L.residueScatter.value} g`],
  ['learning.md', `castings + spare (one in ${NUMBERS[1 / RUN_RULES.spareShare.value]}, chosen here)`],
  [
    'numbers.md',
    `Look outside ${packFine.low} to ${packFine.high}, Stop over ${packStopAbove.value}, refused outside ${packFactor.low} to ${packFactor.high}`,
  ],
  [
    'numbers.md',
    `Look over ${percent(R.shortFillLook.value)} %, Stop over ${percent(R.shortFillStop.value)} %`,
  ],
  [
    'numbers.md',
    `Look over ${percent(C.pigmentLook.value)} %, Stop over ${percent(C.pigmentStop.value)} % of the mix`,
  ],
  ['numbers.md', `Look from ${C.trapSmall.value}, Stop over ${C.trapStop.value} cm³`],
  ['numbers.md', `Look from ${C.heavyLift.value} kg: two people`],
  ['numbers.md', `Look over ${M.wallBulge.value} mm (chosen)`],
  ['numbers.md', `Stop under ${D.rubberStop.value} mm`],
  ['numbers.md', `slenderness Look over ${D.slenderLook.value}`],
  ['numbers.md', `${RUN_RULES.turnaroundMin.value} min chosen here`],
  ['numbers.md', `Look over ${P.coreLook.value} °C, Stop over ${P.coreStop.value} °C`],
  ['pitfalls.md', `when it is more than ${percent(R.residueLook.value)} % of the mix`],
  ['pitfalls.md', `over ${C.hotSurface.value} °C skin is hurt`],
] as const)('%s says what the rule has: "%s"', (name, words) => {
  expect(page(name)).toContain(words);
});
