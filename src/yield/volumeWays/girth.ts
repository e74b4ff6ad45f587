import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkVolume, COVER } from './checkVolume';
import { VOLUME_RULES as R } from './rules';

/** A simple body that a tape can take, in mm. Girths are taken around, tight. */
export type TapedBody =
  | { kind: 'limb'; lengthMm: number; girthMm: number; otherGirthMm?: number }
  | { kind: 'ball'; girthMm: number }
  | { kind: 'box'; widthMm: number; depthMm: number; heightMm: number }
  | { kind: 'dome'; girthMm: number; heightMm: number };

/**
 * Volume of simple bodies by the tape, cm3, added up; what overlaps is counted twice and holes are not seen. Limb: a tapered cylinder,
 * L (C1^2 + C1 C2 + C2^2)/(12 pi). Ball: C^3/(6 pi^2). Dome: half an ellipsoid on its base, h C^2/(6 pi). Of all sections of one
 * girth the circle holds most, so the value is that of an oval of 1.2 to 1 and the range runs from 1.5 to 1 to the circle, with
 * 3 mm of tape. The doubts of several bodies are alike, so their ends are added. Meant for 95 of 100.
 */
export function volumeByGirth(bodies: readonly TapedBody[]): Outcome<Estimate> {
  const sum = { value: 0, low: 0, high: 0 };
  for (const body of bodies) {
    const one = volumeOfBody(body);
    if (!one.ok) return one;
    sum.value += one.value.value;
    sum.low += one.value.low;
    sum.high += one.value.high;
  }
  return good({ ...sum, from: 'taped' });
}

function volumeOfBody(body: TapedBody): Outcome<Omit<Estimate, 'from'>> {
  const sound = checkBody(body);
  if (!sound.ok) return sound;
  const cm3 = perfectMm3(body) / 1000;
  const tape = tapeShare(body);
  const [middle, least] =
    body.kind === 'box'
      ? [R.boxFill.value, R.boxFill.low]
      : [ovalShare(R.roundness.value), ovalShare(R.roundness.high)];
  return good({
    value: cm3 * middle,
    low: cm3 * least * Math.max(0, 1 - COVER * tape),
    high: cm3 * (1 + COVER * tape),
  });
}

function checkBody(body: TapedBody): Outcome<true> {
  switch (body.kind) {
    case 'limb': {
      const { lengthMm, girthMm, otherGirthMm } = body;
      const first = checkVolume({ tapedLengthMm: lengthMm, girthMm });
      return first.ok ? checkVolume({}, { girthMm: otherGirthMm }) : first;
    }
    case 'ball':
      return checkVolume({ girthMm: body.girthMm });
    case 'box': {
      const { widthMm, depthMm, heightMm } = body;
      return checkVolume({ tapedWidthMm: widthMm, tapedDepthMm: depthMm, tapedHeightMm: heightMm });
    }
    case 'dome':
      return checkVolume({ tapedHeightMm: body.heightMm, girthMm: body.girthMm });
  }
}

function perfectMm3(body: TapedBody): number {
  switch (body.kind) {
    case 'limb': {
      const { lengthMm, girthMm: one, otherGirthMm: other = one } = body;
      return (lengthMm * (one ** 2 + one * other + other ** 2)) / (12 * Math.PI);
    }
    case 'ball':
      return body.girthMm ** 3 / (6 * Math.PI ** 2);
    case 'box':
      return body.widthMm * body.depthMm * body.heightMm;
    case 'dome':
      return (body.heightMm * body.girthMm ** 2) / (6 * Math.PI);
  }
}

/** What the tape's doubt does to the volume, each size on its own (JCGM 100, 5.1.2): a girth counts twice, of a ball three times. */
function tapeShare(body: TapedBody): number {
  const u = R.tapeU.value;
  switch (body.kind) {
    case 'limb': {
      const { lengthMm, girthMm: one, otherGirthMm: other = one } = body;
      return Math.hypot(u / lengthMm, (2 * u) / ((one + other) / 2));
    }
    case 'ball':
      return (3 * u) / body.girthMm;
    case 'box':
      return Math.hypot(u / body.widthMm, u / body.depthMm, u / body.heightMm);
    case 'dome':
      return Math.hypot(u / body.heightMm, (2 * u) / body.girthMm);
  }
}

/** Area of an ellipse over that of the circle of the same girth; girth by Ramanujan's second formula (1914). */
export function ovalShare(widthOverDepth: number): number {
  const h = ((widthOverDepth - 1) / (widthOverDepth + 1)) ** 2;
  const girth = Math.PI * (widthOverDepth + 1) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
  return (4 * Math.PI * Math.PI * widthOverDepth) / girth ** 2;
}
