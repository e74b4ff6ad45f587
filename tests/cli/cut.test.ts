import { describe, expect, it } from 'vitest';
import { call, document, documents, type Document } from '../support/cliCall';
import { expectClose } from '../support/close';
import { joined, moved } from '../support/meshTools';
import { box, revolvedVolume, sphere, sphereOutline } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

describe('size --cut', () => {
  const outline = sphereOutline(50, 48);
  const desk = { files: { 'ball.stl': stlBytes(moved(sphere(50, 48), [0, 0, 50])) } };
  const size = (...more: string[]): Document =>
    document(['size', 'ball.stl', '--file-unit', 'mm', ...more], desk);
  const whole = revolvedVolume(outline, 96) / 1000;

  it.each(['z=50mm', 'z=5cm', 'z >= 50 mm', 'z=50'])(
    '%s keeps the upper half of a ball on the board (frusta of polygons); no hole is left',
    (plane) => {
      const half = size('--cut', plane);
      // Vertices are float32 in the file: 4e-6 of a mm on 50.
      expectClose(half.result.volume_cm3 as number, whole / 2, 1e-6);
      expect(half.result).toMatchObject({ holes: 0, rims: [] });
      const [low, high] = half.range.volume_cm3!;
      // The height of a cut is known to 0.5 mm either way (common practice, no source): times the circle of r = 50 mm, whose
      // polygon holds up to 0.2 % less.
      expectClose(high - low, (2 * 0.5 * Math.PI * 50 ** 2) / 1000, 2e-3, 'width of the range');
      const away = half.findings.find((f) => f.code === 'CUT_AWAY')!;
      expectClose(-away.effect_cm3! + (half.result.volume_cm3 as number), whole, 1e-6, 'removed + kept');
    },
  );

  it('z<= keeps the side below, and two cuts leave a slice', () => {
    const [below, above] = [size('--cut', 'z<=30mm'), size('--cut', 'z=30mm')];
    expectClose((below.result.volume_cm3 as number) + (above.result.volume_cm3 as number), whole, 1e-6);
    const slice = size('--cut', 'z=30mm', '--cut', 'z<=70mm');
    expectClose(slice.result.volume_cm3 as number, whole - 2 * (below.result.volume_cm3 as number), 1e-6);
    expect(slice.inputs.cut).toEqual(['z=30mm', 'z<=70mm']);
  });

  it('a comma is a decimal sign in units of the file too, and asked about where it may mark thousands', () => {
    const at = (plane: string): unknown => size('--cut', plane).result.volume_cm3;
    expect(at('z=30,5 units')).toBe(at('z=30.5 units'));
    expect(size('--cut', 'z=1,250 units').error!.text).toContain('It can be "1.25" or "1250"');
    expect(at('z=-10.5 units')).toBe(at('z=-10.5mm'));
  });

  it.each(['z=--5 units', 'z=- -5mm', 'z=5 mm units', 'z=1e1 units'])('"%s" is not read', (plane) => {
    expect(size('--cut', plane).error!.code).toBe('BAD_CALL');
  });

  it('a negative height', () => {
    expectClose(size('--cut', 'z=-10mm').result.volume_cm3 as number, whole, 1e-6);
  });

  it.each(['z', 'w=12', 'z~12', '=12', 'z=', 'z=12 kg', 'z=1,250'])('"%s" is no plane: exit 2', (plane) => {
    const called = call(['size', 'ball.stl', '--file-unit', 'mm', '--json', '--cut', plane], desk);
    expect(called.exit).toBe(2);
    expect(documents(called)[0]!.error!.code).toBe('BAD_CALL');
  });

  it('the table that is found is cut off by the very words of its hint', () => {
    const onTable = {
      files: {
        'a.stl': stlBytes(joined(box([60, 50, 120], [-30, -25, 10]), box([220, 200, 10], [-110, -100, 0]))),
      },
    };
    const found = document(['size', 'a.stl', '--file-unit', 'mm'], onTable).findings.find(
      (f) => f.code === 'FLOOR_FOUND',
    )!;
    const [, plane] = /--cut "([^"]+)"/.exec(found.text)!;
    expectClose(
      document(['size', 'a.stl', '--file-unit', 'mm', '--cut', plane!], onTable).result.volume_cm3 as number,
      360,
      1e-6,
      '60 x 50 x 120 mm',
    );
  });
});
