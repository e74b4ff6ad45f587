import type { Size } from '../../plan';
import type { Outcome } from '../../problem';
import { sizeBecause } from '../../words/sizeWords';
import { inputsGiven, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, errorJson, findingJson, type Envelope } from '../envelope';
import { EXIT, exitOf, type ExitCode } from '../exit';
import type { Io } from '../io';
import { answer, complain, exitOfAnswer, showOf } from '../report';
import { LATER_SCAN_OPTIONS, notBuiltYet, SCAN_OPTIONS, sizeOf } from '../scanOptions';
import { sizeText } from '../sizeText';

export const size: CommandSpec = {
  name: 'size',
  operands: '<scan...>',
  about: 'Volume of a scanned sculpt, with its range and everything that was found on the way',
  options: [...SCAN_OPTIONS, ...LATER_SCAN_OPTIONS],
  run: ({ operands, options, io }) => {
    const built = notBuiltYet(options, LATER_SCAN_OPTIONS);
    if (!built.ok) return complain(built.problem, options, io);
    const texts: string[] = [];
    let exit: ExitCode = EXIT.answered;
    for (const file of operands) {
      const result = sizeOf(file, options, io);
      const ended = sizeOne(file, result, { options, io, texts });
      if (exit === EXIT.answered) exit = ended;
    }
    if (texts.length > 0) answer(texts.join('\n'), options, io);
    return exit;
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
    inputs: { file, ...inputsGiven(options, SCAN_OPTIONS) },
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
    },
    range: { volume_cm3: [size.volumeCm3.low, size.volumeCm3.high] },
    because: sizeBecause(size),
  };
}
