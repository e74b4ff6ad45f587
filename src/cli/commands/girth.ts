import type { Show } from '../../units';
import type { TapedBody } from '../../yield';
import { assumptionLine } from '../../words/assumptionWords';
import { bodyWords, girthBecause, volumeWithRange } from '../../words/volumeWayWords';
import { inputsGiven, type CommandSpec, type OptionValues } from '../command';
import { assumptionJson, type Envelope } from '../envelope';
import { GIRTH_OPTIONS } from '../girthBodies';
import { girthCall, type Girth } from '../girthCall';
import { line } from '../moldLines';
import { answer, complain, exitOfAnswer, showOf } from '../report';

export const girth: CommandSpec = {
  name: 'girth',
  about: 'Rough volume of a sculpt from a tape: limbs, balls, boxes and domes, added up',
  options: GIRTH_OPTIONS,
  run: ({ options, io }) => {
    const taped = girthCall(options);
    if (!taped.ok) return complain(taped.problem, options, io);
    const text =
      options.json === true
        ? JSON.stringify(envelopeOf(taped.value, options))
        : girthText(taped.value, showOf(options));
    answer(text, options, io);
    return exitOfAnswer([], options);
  },
};

const bodiesOf = ({ parts }: Girth): TapedBody[] => parts.map(({ body }) => body);

const envelopeOf = (taped: Girth, options: OptionValues): Envelope => ({
  schema: 'risewright/girth@1',
  inputs: inputsGiven(options, GIRTH_OPTIONS),
  assumptions: taped.assumptions.map(assumptionJson),
  findings: [],
  result: {
    volume_cm3: taped.volumeCm3.value,
    parts: taped.parts.map(({ body, volumeCm3: { value, low, high } }) => ({
      kind: body.kind,
      ...sizesOf(body),
      volume_cm3: value,
      range_cm3: [low, high],
    })),
  },
  range: { volume_cm3: [taped.volumeCm3.low, taped.volumeCm3.high] },
  because: girthBecause(bodiesOf(taped)),
});

function sizesOf(body: TapedBody): Record<string, number | number[]> {
  switch (body.kind) {
    case 'limb': {
      const { lengthMm, girthMm, otherGirthMm } = body;
      return { length_mm: lengthMm, girths_mm: [girthMm, otherGirthMm ?? girthMm] };
    }
    case 'ball':
      return { girth_mm: body.girthMm };
    case 'box':
      return { width_mm: body.widthMm, depth_mm: body.depthMm, height_mm: body.heightMm };
    case 'dome':
      return { girth_mm: body.girthMm, height_mm: body.heightMm };
  }
}

/** A tape tells no more. */
const DIGITS = 3;

const girthText = (taped: Girth, show: Show): string =>
  [
    ...taped.assumptions.map((assumption) => line('Assumed', assumptionLine(assumption, show))),
    ...girthBecause(bodiesOf(taped)).map((why) => line('Because', why)),
    ...taped.parts.map(({ body, volumeCm3 }) =>
      line('Part', `${bodyWords(body, show)}: ${volumeWithRange(volumeCm3, DIGITS, show)}`),
    ),
    line('Volume', `${volumeWithRange(taped.volumeCm3, DIGITS, show)} (${taped.volumeCm3.from})`),
  ].join('\n');
