import { describe, expect, it } from 'vitest';
import { turnUp, UP_AXES, type Vector } from '../../src/geometry';
import { answer, type Desk } from '../../src/worker/answer';
import { createEngine, type WorkerLike } from '../../src/worker/engine';
import type { Answers, FromWorker, Picked, PicturePlace, Picture } from '../../src/worker/protocol';
import { valueOf } from '../support/outcome';
import { sampleBytes } from '../support/samples';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

/** A box from (1, 2, 3) to (5, 10, 15) in units of the file. */
const LOW: Vector = [1, 2, 3];
const HIGH: Vector = [5, 10, 15];

const deskWith = (bytes: Uint8Array): Desk => {
  const desk: Desk = {};
  answer(desk, { kind: 'open', name: 'a.stl', bytes: bytes.slice().buffer }, () => undefined);
  return desk;
};
const desk = deskWith(stlBytes(box([4, 8, 12], LOW)));

const pictureOf = (place: PicturePlace): Picture =>
  valueOf(answer(desk, { kind: 'picture', place }, () => undefined) as Answers['picture']);

/** Points straight down at the middle of the picture, from well above it, as the page does: the picture's middle is added. */
function pickFromTop(place: PicturePlace): Picked {
  const { middleUnits } = pictureOf(place);
  const from: Vector = [middleUnits[0], middleUnits[1], middleUnits[2] + 100];
  const ray = { from, direction: [0, 0, -1] as const };
  return valueOf(answer(desk, { kind: 'pick', ray, place }, () => undefined) as Answers['pick']);
}

describe('picking on the drawn scan gives the place in the file', () => {
  it.each(UP_AXES)('with %s up: the middle of the face that is on top', (up) => {
    const axis = 'xyz'.indexOf(up.slice(1));
    const expected = LOW.map((low, k) => (low + HIGH[k]!) / 2);
    expected[axis] = up.startsWith('+') ? HIGH[axis]! : LOW[axis]!;
    expect(pickFromTop({ up }).at).toEqual(expected);
  });

  it('beside it: none', () => {
    const ray = { from: [100, 100, 100], direction: [0, 0, -1] } as const;
    const place = { up: '+z' } as const;
    expect(answer(desk, { kind: 'pick', ray, place }, () => undefined)).toEqual({ ok: true, value: {} });
  });

  it('what a cut has taken is not there: from above, the bottom is hit through the open top', () => {
    const place = { up: '+z', cut: { atUnits: 9, keep: 'below' } } as const;
    expect(pictureOf(place).middleUnits).toEqual([3, 6, 6]);
    expect(pickFromTop(place).at).toEqual([3, 6, 3]);
  });

  it('the picture lies about its middle, on the file\u2019s own zero with Z up', () => {
    for (const up of UP_AXES) {
      const { middleUnits, place } = pictureOf({ up });
      expect([...middleUnits]).toEqual([...turnUp([3, 6, 9], up)]);
      expect(place).toEqual({ up });
    }
  });
});

it('Quay Troll: the highest point from above is 11.45 units over the lowest from below, 290.85 mm in inches', () => {
  const troll = deskWith(sampleBytes('quay-troll-scan.stl'));
  const place = { up: '+y' } as const;
  const picture = valueOf(answer(troll, { kind: 'picture', place }, () => undefined) as Answers['picture']);
  // The tip of a horn is the highest vertex of the picture; its neck is cut flat, so the lowest is below any place near its rim.
  let tip = 0;
  for (let v = 0; v < picture.positions.length; v += 3)
    if (picture.positions[v + 2]! > picture.positions[tip + 2]!) tip = v;
  const [x, y] = [picture.positions[tip]!, picture.positions[tip + 1]!];
  const ray = {
    from: [x + picture.middleUnits[0], y + picture.middleUnits[1], 100] as const,
    direction: [0, 0, -1] as const,
  };
  const { at } = valueOf(answer(troll, { kind: 'pick', ray, place }, () => undefined) as Answers['pick']);
  const lowest = picture.middleUnits[2] - picture.halfUnits[2];
  // Specks lie beside the head, none above it; the picture is rounded to float32.
  expect(Math.abs(25.4 * (turnUp(at!, '+y')[2] - lowest) - 290.85)).toBeLessThan(0.05);
});

it('a pick goes before what waits, and only the newest is answered', async () => {
  const sent: string[] = [];
  const worker: WorkerLike = {
    postMessage: ({ id, request }) => {
      sent.push(request.kind === 'pick' ? `pick ${request.ray.from[0]}` : request.kind);
      const answers = request.kind === 'pick' ? { at: request.ray.from } : {};
      setTimeout(() =>
        worker.onmessage?.({
          data: { id, say: 'answer', answer: { ok: true, value: answers } },
        } as MessageEvent<FromWorker>),
      );
    },
    terminate: () => undefined,
    onmessage: null,
    onfault: null,
  };
  const engine = createEngine(
    () => worker,
    () => undefined,
  );
  const at = (x: number): Promise<unknown> =>
    engine.ask({ kind: 'pick', ray: { from: [x, 0, 0], direction: [0, 0, -1] }, place: { up: '+z' } });
  const [size, picture, first, second] = [
    engine.ask({ kind: 'size', wish: {} }),
    engine.ask({ kind: 'picture', place: { up: '+z' } }),
    at(1),
    at(2),
  ];
  expect(await first).toEqual({ how: 'dropped' });
  expect(await second).toMatchObject({ how: 'answered', answer: { value: { at: [2, 0, 0] } } });
  await Promise.all([size, picture]);
  expect(sent).toEqual(['size', 'pick 2', 'picture']);
});
