import { pourCautionKeys, runChecks, type CheckFacts } from '../../checks';
import type { Problem } from '../../problem';
import { panelStress, POUR_RULES } from '../../yield';
import type { Pour } from '../planPour';
import type { Forces } from './forces';
import type { PourAsk } from './pourAsk';
import type { Times } from './times';
import type { CupPlan } from '../../yield';

interface Known {
  pour: Pour;
  cups: CupPlan;
  forces: Forces;
  times: Times;
}

/** The checks of the pour and the cautions that apply, from what was reckoned and what the user said; what the user says of a fact wins. */
export function checksOf(ask: PourAsk, known: Known): { checks: Problem[]; cautions: string[] } {
  const facts: CheckFacts = { ...reckoned(ask, known), ...panelOf(ask, known.forces), ...ask.facts };
  return { checks: runChecks(facts, 'pour'), cautions: pourCautionKeys(facts) };
}

function reckoned(ask: PourAsk, { pour: { batch }, cups, forces, times }: Known): CheckFacts {
  const cup = cups.cups[0];
  const { window, exotherm } = times;
  const { freeRiseKgM3 } = ask.pour;
  return {
    cupTestedToday: freeRiseKgM3.from === 'cup-test' && freeRiseKgM3.isOld !== true,
    airPressureFrom: airFrom(ask),
    partAG: cup?.partAG,
    partBG: cup?.partBG,
    scaleStepG: batch.stepG,
    packFactor: batch.packFactor,
    shortFillChance: batch.shortFillChance,
    liquidCm3: cup === undefined ? undefined : (1000 * cup.totalG) / batch.liquidKgM3,
    cupCm3: ask.cups?.cupCm3,
    pourTimeS: window === undefined || cup === undefined ? undefined : cup.totalG / POUR_RULES.pourRate.value,
    pourWindowS: window?.pourWindowS.value,
    pourWindowLowS: window?.pourWindowS.low,
    moldTempC: ask.moldC,
    // A strap whose limit nobody gave would always hold.
    strapBuckleN: forces.straps?.buckleN,
    strapWorkingN: ask.clamp?.straps?.strapN,
    plugN: forces.plugN,
    coreTempC: exotherm.known ? exotherm.coreC?.high : undefined,
    cardOpenMin: ask.foam?.openMin,
  };
}

/** The widest flat part of the jacket under the pressure the clamp is made for, where its thickness is known. */
function panelOf({ clamp, warm, facts }: PourAsk, { pressureKPa }: Forces): CheckFacts {
  const panelMm = clamp?.jacketMm ?? warm?.jacket?.thicknessMm;
  const panelSpanMm = facts?.panelSpanMm;
  if (panelMm === undefined || panelSpanMm === undefined || !(panelSpanMm > 0)) return {};
  const stress = panelStress({ gaugeKPa: pressureKPa.designKPa, panelSpanMm, panelMm });
  return stress.ok ? { panelVerdict: stress.value.verdict, panelLargestMm: stress.value.largestSpanMm } : {};
}

function airFrom({ air }: PourAsk): CheckFacts['airPressureFrom'] {
  if (air?.stationKPa !== undefined) return 'barometer';
  return air?.altitudeM === undefined ? undefined : 'height above the sea';
}
