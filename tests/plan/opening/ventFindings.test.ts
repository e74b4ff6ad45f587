import { expect, test } from 'vitest';
import { planOpening, type OpeningAsk } from '../../../src/plan';
import { benchOf } from '../../support/moldBench';
import { cylinderOn, turnedBody } from '../../support/moldShapes';
import { valueOf } from '../../support/outcome';

const countsOf = (mesh: Parameters<typeof benchOf>[0], ask: OpeningAsk) =>
  Object.fromEntries(
    valueOf(planOpening(benchOf(mesh), ask)).findings.map(({ code, values }) => [code, values.count]),
  );

// It stands on the face with the opening and is poured the other way round: the board's face is on top.
test('A vent that the poured liquid covers is told; one above it is not', () => {
  const tall = cylinderOn(30, 100);
  // A tenth of the cavity stands 10 mm deep, up to z = 90.
  const liquidCm3 = (Math.PI * 3 ** 2 * 10) / 10;
  const low: [number, number, number] = [30, 0, 95];
  const high: [number, number, number] = [30, 0, 50];
  const counts = countsOf(tall, { vents: [low, high], pour: { liquidCm3 } });
  expect(counts).toHaveProperty('VENT_UNDER_LIQUID', 1);
  expect(countsOf(tall, { vents: [high], pour: { liquidCm3 } })).not.toHaveProperty('VENT_UNDER_LIQUID');
  expect(countsOf(tall, { vents: [low, high] })).not.toHaveProperty('VENT_UNDER_LIQUID');
});

test('A vent on a spike that is thinner than what is looked at is told as not reached', () => {
  const spiked = turnedBody([
    [0, 0],
    [30, 0],
    [30, 60],
    [0.1, 60],
    [0.1, 80],
    [0, 80],
  ]);
  const counts = countsOf(spiked, {
    vents: [
      [0, 0, 80],
      [30, 0, 30],
    ],
  });
  expect(counts).toHaveProperty('VENT_NOT_REACHED', 1);
  expect(countsOf(spiked, { vents: [[30, 0, 30]] })).not.toHaveProperty('VENT_NOT_REACHED');
});
