import type { Assumption, Estimate } from '../estimate';
import { castingCavity, type Casting, type HollowCavity, type PourInputs, type Size } from '../plan';
import { bad, good, type Outcome, type Problem } from '../problem';
import type { Shop } from '../job/shop';
import { hollowCavityCm3, type Given } from '../yield';
import { flagOf } from './batchOptions';
import { textOf, type OptionSpec, type OptionValues } from './command';
import type { Io } from './io';
import { defined, readFigures } from './moldFigures';
import { siliconeOptions } from './moldSiliconeOptions';
import { quantityOption } from './quantity';
import { measuredForPour } from './pourScan';
import { FIELD_OPTIONS, SCAN_OPTIONS, scanOptionGiven } from './scanOptions';

/** A pour asks for no offsets and writes no surface. */
const POUR_FIELD_OPTIONS = FIELD_OPTIONS.filter(({ flags }) => !/^--(offset|surface) /.test(flags));

const OPENS = ['+x', '-x', '+y', '-y', '+z', '-z'];

/** What stands in the cavity, what the mold did to it, and which way it opens. */
export const CAVITY_OPTIONS: readonly OptionSpec[] = [
  { flags: '--core <scan>', about: 'core in the cavity, a scan in the units and axes of the outer one' },
  { flags: '--core-offset <length>', about: 'or a core so far inside the surface (bare number: mm)' },
  { flags: '--armature <volume>', about: 'armature in the cavity (bare number: cm3)' },
  { flags: '--core-mass <mass>', about: 'core with its armature (bare number: g): does it float?' },
  { flags: '--core-neck <area>', about: 'where the core leaves through the wall (bare number: cm2)' },
  { flags: '--silicone <card>', about: 'silicone of the mold, by its card: the cavity as it shrank' },
  { flags: '--shrink <share>', about: 'linear shrink of the mold as you measured it, as "0.3 %"' },
  { flags: '--opens <axis>', about: 'way the mold opens, on the piece turned up', choices: OPENS },
  ...SCAN_OPTIONS,
  ...POUR_FIELD_OPTIONS,
];

/** Options that say nothing where there is no scan. */
const SCAN_ONLY = [
  ...['core', 'coreOffset', 'silicone', 'shrink', 'opens', 'accuracy', 'voxel', 'workers', 'coreNeck'],
  'coreMass',
];

/** What is poured for, and how it came about. */
export interface Cavity {
  cavity: PourInputs['cavity'];
  size?: Size;
  hollow?: HollowCavity;
  casting?: Casting;
  armatureCm3?: number;
  core?: { coreCm3: number; coreG?: number; neckCm2?: number };
  findings: Problem[];
  assumptions: Assumption[];
}

/** What of the pour bears on the cavity: how warm it is. */
export interface Warmths {
  roomC?: number;
  moldC?: number;
}

/** Errors: BAD_CALL, those of the scan, of its core and of the silicone. */
export function cavityOption(
  options: OptionValues,
  io: Io,
  shop: Shop | undefined,
  warmths: Warmths,
): Outcome<Cavity> {
  const [scan, volume] = [textOf(options, 'scan'), textOf(options, 'volume')];
  if ((scan === undefined) === (volume === undefined)) {
    return bad('BAD_CALL', {
      text:
        scan === undefined
          ? 'There is nothing to pour for.'
          : 'A scan and a volume are two answers to one question.',
      hint: 'Give either --scan SCAN or --volume "4.5 L".',
    });
  }
  const armature = readFigures(options, [
    { key: 'armatureCm3', option: 'armature', kind: 'volume', bareUnit: 'cm3', allowZero: true },
  ]);
  if (!armature.ok) return armature;
  const { armatureCm3 } = armature.value;
  return scan === undefined
    ? volumeCavity(volume!, options, armatureCm3)
    : scanCavity({ scan, options, io, shop, warmths, armatureCm3 });
}

function volumeCavity(
  volume: string,
  options: OptionValues,
  armatureCm3: number | undefined,
): Outcome<Cavity> {
  const stray = scanOptionGiven(options) ?? SCAN_ONLY.find((option) => options[option] !== undefined);
  if (stray !== undefined) {
    const flag = flagOf(stray);
    return bad('BAD_CALL', {
      text: `${flag} is about a scan, and a volume was given.`,
      hint: `Leave ${flag} out, or give --scan SCAN instead of --volume.`,
    });
  }
  const read = quantityOption('--volume', volume, 'volume', 'cm3');
  if (!read.ok) return read;
  if (armatureCm3 === undefined)
    return good({
      cavity: { volumeCm3: { value: read.value, from: 'given' } },
      findings: [],
      assumptions: [],
    });
  const left = hollowCavityCm3({ outerCm3: { value: read.value }, armatureCm3: { value: armatureCm3 } });
  if (!left.ok) return left;
  return good({
    cavity: { volumeCm3: { value: left.value.value, from: 'given' } },
    armatureCm3,
    findings: [],
    assumptions: [],
  });
}

interface ScanCall {
  scan: string;
  options: OptionValues;
  io: Io;
  shop: Shop | undefined;
  warmths: Warmths;
  armatureCm3: number | undefined;
}

function scanCavity({ scan, options, io, shop, warmths, armatureCm3 }: ScanCall): Outcome<Cavity> {
  const silicone = siliconeOptions(options, shop);
  if (!silicone.ok) return silicone;
  const core = coreFigures(options);
  if (!core.ok) return core;
  const measured = measuredForPour({ scan, options, io, armatureCm3, coreOffsetMm: core.value.coreOffsetMm });
  if (!measured.ok) return measured;
  const { size, hollow } = measured.value;
  const wantsCasting = textOf(options, 'silicone') !== undefined || textOf(options, 'shrink') !== undefined;
  const { roomC, moldC } = warmths;
  const casting = wantsCasting
    ? castingCavity(size.volumeCm3, {
        ...silicone.value,
        ...(roomC === undefined ? {} : { work: { roomC } }),
        ...(moldC === undefined ? {} : { castingTempC: moldC }),
      })
    : undefined;
  if (casting?.ok === false) return casting;
  const cavity = cavityOf(size, hollow, casting?.value, armatureCm3);
  if (!cavity.ok) return cavity;
  const { coreG, neckCm2 } = core.value;
  const coreCm3 = hollow?.coreCm3?.value;
  return good({
    cavity: cavity.value,
    size,
    ...defined({ hollow, casting: casting?.value, armatureCm3 }),
    ...(coreCm3 === undefined ? {} : { core: { coreCm3, ...defined({ coreG, neckCm2 }) } }),
    findings: [...size.findings, ...(hollow?.findings ?? []), ...(casting?.value.findings ?? [])],
    assumptions: [...size.assumptions, ...(casting?.value.assumptions ?? [])],
  });
}

type CoreFigures = { coreOffsetMm?: number; coreG?: number; neckCm2?: number };

function coreFigures(options: OptionValues): Outcome<CoreFigures> {
  const read = readFigures<keyof CoreFigures>(options, [
    { key: 'coreOffsetMm', option: 'coreOffset', kind: 'length', bareUnit: 'mm' },
    { key: 'coreG', option: 'coreMass', kind: 'mass', bareUnit: 'g', allowZero: true },
    { key: 'neckCm2', option: 'coreNeck', kind: 'area', allowZero: true },
  ]);
  if (!read.ok) return read;
  const hasCore = textOf(options, 'core') !== undefined || read.value.coreOffsetMm !== undefined;
  const stray = ['coreMass', 'coreNeck'].find((option) => options[option] !== undefined);
  if (hasCore || stray === undefined) return read;
  return bad('BAD_CALL', {
    text: `${flagOf(stray)} is about a core, and there is none.`,
    hint: 'Give --core SCAN or --core-offset "20 mm".',
  });
}

/** The sculpt as scanned; or as the mold shrank and grew; less core and armature in either case. */
function cavityOf(
  size: Size,
  hollow: HollowCavity | undefined,
  casting: Casting | undefined,
  armatureCm3: number | undefined,
): Outcome<PourInputs['cavity']> {
  if (casting === undefined)
    return good(hollow === undefined ? { size } : { volumeCm3: givenOf(hollow.cavityCm3) });
  if (hollow === undefined) return good({ volumeCm3: givenOf(casting.cavityCm3) });
  const left = hollowCavityCm3({
    outerCm3: casting.cavityCm3,
    ...(hollow.coreCm3 === undefined ? {} : { coreCm3: hollow.coreCm3 }),
    ...(armatureCm3 === undefined ? {} : { armatureCm3: { value: armatureCm3 } }),
  });
  return left.ok ? good({ volumeCm3: givenOf({ ...left.value, from: size.volumeCm3.from }) }) : left;
}

const givenOf = ({ value, low, high, from }: Estimate): Given => ({ value, low, high, from });
