import { bad, good, type Outcome, type Problem } from '../../problem';
import { planPour, type Pour, type PourInputs, type Size } from '../../plan';
import { batchBecause } from '../../words/batchWords';
import { BATCH_OPTIONS, batchOptions, LATER_BATCH_OPTIONS } from '../batchOptions';
import { batchText } from '../batchText';
import { inputsGiven, textOf, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, findingJson, type Envelope } from '../envelope';
import type { Io } from '../io';
import { quantityOption } from '../quantity';
import { answer, complain, exitOfAnswer, showOf } from '../report';
import { FIELD_OPTIONS, notBuiltYet, SCAN_OPTIONS, scanOptionGiven, sizeOf } from '../scanOptions';

/** A batch asks for no offsets until cores are built. */
const LATER_FIELD_OPTIONS = FIELD_OPTIONS.map((option) => ({ ...option, about: 'not built yet' }));

export const batch: CommandSpec = {
  name: 'batch',
  about: 'Grams of A and B to weigh for a cavity, and the chance that it comes up short',
  options: [...BATCH_OPTIONS, ...SCAN_OPTIONS, ...LATER_BATCH_OPTIONS, ...LATER_FIELD_OPTIONS],
  run: ({ options, io }) => {
    const planned = planOf(options, io);
    if (!planned.ok) return complain(planned.problem, options, io, textOf(options, 'scan'));
    const { pour, size } = planned.value;
    const findings = [...(size?.findings ?? []), ...pour.batch.findings];
    const text =
      options.json === true
        ? JSON.stringify(batchEnvelope(pour, size, findings, options))
        : batchText(pour, size, findings, showOf(options));
    answer(text, options, io);
    return exitOfAnswer(findings, options);
  },
};

interface Planned {
  pour: Pour;
  size: Size | undefined;
}

function planOf(options: OptionValues, io: Io): Outcome<Planned> {
  const built = notBuiltYet(options, [...LATER_BATCH_OPTIONS, ...LATER_FIELD_OPTIONS]);
  if (!built.ok) return built;
  const foam = batchOptions(options, io);
  if (!foam.ok) return foam;
  const cavity = cavityOption(options, io);
  if (!cavity.ok) return cavity;
  const pour = planPour({ ...foam.value, cavity: cavity.value });
  if (!pour.ok) return pour;
  return good({ pour: pour.value, size: 'size' in cavity.value ? cavity.value.size : undefined });
}

function cavityOption(options: OptionValues, io: Io): Outcome<PourInputs['cavity']> {
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
  if (scan !== undefined) {
    const size = sizeOf(scan, options, io);
    return size.ok ? good({ size: size.value }) : size;
  }
  const stray = scanOptionGiven(options);
  if (stray !== undefined) {
    return bad('BAD_CALL', {
      text: `--${stray} is about a scan, and a volume was given.`,
      hint: `Leave --${stray} out, or give --scan SCAN instead of --volume.`,
    });
  }
  const read = quantityOption('--volume', volume!, 'volume', 'cm3');
  return read.ok ? good({ volumeCm3: { value: read.value, from: 'given' } }) : read;
}

function batchEnvelope(
  { cavityCm3, batch }: Pour,
  size: Size | undefined,
  findings: Problem[],
  options: OptionValues,
): Envelope {
  return {
    schema: 'risewright/batch@1',
    inputs: inputsGiven(options, [...BATCH_OPTIONS, ...SCAN_OPTIONS]),
    assumptions: [...(size?.assumptions ?? []), ...batch.assumptions].map(assumptionJson),
    findings: findings.map(findingJson),
    result: {
      cavity_cm3: cavityCm3.value,
      mixed_g: batch.totalG,
      part_a_g: batch.partAG,
      part_b_g: batch.partBG,
      in_mold_g: batch.inMoldG,
      pack_factor: batch.packFactor,
      molded_density_kg_m3: batch.moldedDensityKgM3,
      short_fill_chance: batch.shortFillChance,
      uncertainty: batch.uncertainty.map(({ input, share }) => ({ input, share })),
    },
    range: { cavity_cm3: [cavityCm3.low, cavityCm3.high], mixed_g: batch.mixedRangeG },
    because: batchBecause({ cavityCm3, batch }),
  };
}
