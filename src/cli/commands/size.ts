import type { Offsets, Size } from '../../plan';
import type { Outcome } from '../../problem';
import { sizeBecause } from '../../words/sizeWords';
import { inputsGiven, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, errorJson, findingJson, type Envelope } from '../envelope';
import { EXIT, exitOf, type ExitCode } from '../exit';
import type { Io } from '../io';
import { answer, complain, exitOfAnswer, showOf } from '../report';
import { sizeOf } from '../measureScan';
import { FIELD_OPTIONS, fieldOptions, SCAN_OPTIONS } from '../scanOptions';
import { sizeText } from '../sizeText';
import { wantsSurface, writeSurface } from '../surfaceOption';

export const size: CommandSpec = {
  name: 'size',
  operands: '<scan...>',
  about: 'Volume of a scanned sculpt, with its range and everything that was found on the way',
  options: [...SCAN_OPTIONS, ...FIELD_OPTIONS],
  run: ({ operands, options, io }) => {
    const field = fieldOptions(options);
    if (!field.ok) return complain(field.problem, options, io);
    const surface = wantsSurface(options, field.value, operands);
    if (!surface.ok) return complain(surface.problem, options, io);
    const texts: string[] = [];
    let exit: ExitCode = EXIT.answered;
    for (const file of operands) {
      const result = sizeOf(file, options, io, field.value);
      const ended = sizeOne(file, result, { options, io, texts });
      if (exit === EXIT.answered) exit = ended;
    }
    if (texts.length > 0) answer(texts.join('\n'), options, io);
    if (!surface.value || (exit !== EXIT.answered && exit !== EXIT.strictStop)) return exit;
    return writeSurface(operands[0]!, options, { io, field: field.value }).then((written) =>
      written.ok ? exit : complain(written.problem, { ...options, json: false }, io, operands[0]),
    );
  },
};

function sizeOne(
  file: string,
  result: Outcome<Size>,
  to: { options: OptionValues; io: Io; texts: string[] },
): ExitCode {
  const { options, io, texts } = to;
  if (!result.ok) {
    if (options.json === true) texts.push(errorJson(result.problem, file));
    else complain(result.problem, options, io, file);
    return exitOf(result.problem.code);
  }
  texts.push(
    options.json === true
      ? JSON.stringify(sizeEnvelope(file, result.value, options))
      : sizeText(file, result.value, showOf(options)),
  );
  return exitOfAnswer(result.value.findings, options);
}

function sizeEnvelope(file: string, size: Size, options: OptionValues): Envelope {
  return {
    schema: 'risewright/size@1',
    inputs: { file, ...inputsGiven(options, [...SCAN_OPTIONS, ...FIELD_OPTIONS]) },
    assumptions: size.assumptions.map(assumptionJson),
    findings: size.findings.map(findingJson),
    result: {
      volume_cm3: size.volumeCm3.value,
      area_cm2: size.areaCm2,
      extents_mm: size.extentsMm,
      triangles: size.triangles,
      pieces: size.pieces,
      holes: size.holes,
      rims: size.rims
        .filter((r) => r.kind === 'hole')
        .map((r) => ({ length_mm: r.lengthMm, area_cm2: r.areaMm2 / 100, flatness_mm: r.flatnessMm })),
      closed: size.closed,
      method: size.method,
      file_unit: size.scale.fileUnit,
      ...(size.offsets === undefined ? {} : offsetsJson(size.offsets)),
    },
    range: { volume_cm3: [size.volumeCm3.low, size.volumeCm3.high] },
    because: sizeBecause(size),
  };
}

/** `offsets[]` as scripts know them; the envelope only where the piece has a void, and how fine the field was. */
function offsetsJson({ volumes, voxel, accuracy }: Offsets): Record<string, unknown> {
  return {
    offsets: volumes.map(({ offsetMm, volumeCm3, envelopeCm3, areaCm2 }) => ({
      offset_mm: offsetMm,
      volume_cm3: volumeCm3.value,
      range_cm3: [volumeCm3.low, volumeCm3.high],
      area_cm2: areaCm2,
      ...(envelopeCm3 === undefined
        ? {}
        : {
            envelope_cm3: envelopeCm3.value,
            envelope_range_cm3: [envelopeCm3.low, envelopeCm3.high],
          }),
    })),
    voxel_mm: voxel.voxelMm,
    voxel_from: voxel.because,
    ...(voxel.because === 'given' ? {} : { accuracy }),
  };
}
