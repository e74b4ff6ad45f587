import { describe, expect, it } from 'vitest';
import { call, document, type Desk } from '../support/cliCall';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

const desk: Desk = { files: { 'brick.stl': stlBytes(box([100, 80, 60])) } };
const BRICK = ['mold', 'brick.stl', '--file-unit', 'mm', '--type', 'block', '--json'];

/** A call that trips each check of materials, and what it answers. Facts: common practice, no source. */
const TRIPS: readonly [code: string, status: string, args: string[]][] = [
  [
    'CURE_INHIBITION',
    'stop',
    [
      '--cure',
      'addition',
      '--sculpt-surface',
      'sulfur clay',
      '--barrier-coat',
      'none',
      '--patch-tested',
      'no',
    ],
  ],
  ['GLOVES', 'stop', ['--cure', 'addition', '--gloves', 'latex']],
  ['THICK_CONDENSATION', 'look', ['--cure', 'condensation', '--wall', '40', '--cover', '40']],
  ['SHELF_LIFE', 'stop', ['--opened', '2024-01-01', '--today', '2026-11-29', '--patch-tested', 'no']],
  ['PIGMENT', 'stop', ['--pigment', 'silicone based', '--pigment-share', '1 %']],
  ['RELEASE_FOR_PAINT', 'stop', ['--will-paint', 'yes', '--release', 'silicone']],
  ['PAINT_FLEX', 'look', ['--will-paint', 'yes', '--paint-flexible', 'no']],
  ['MOLD_LIFE', 'fine', []],
];

describe('each check of materials can be tripped by a call', () => {
  it.each(TRIPS)('%s: %s', (code, status, args) => {
    const { findings } = document([...BRICK, ...args], desk);
    const found = findings.find((one) => one.code === code)!;
    expect(found.text).not.toMatch(/undefined|NaN/);
    // A stop or a look, as the rule has it; never fine where it should not be.
    if (status === 'stop') expect(['stop', 'look']).toContain(found.status);
    else expect(found.status).toBe(status);
  });

  it('a material that stops the mold ends a strict call with 6', () => {
    const strict = call([...BRICK, '--cure', 'addition', '--gloves', 'latex', '--strict'], desk);
    expect(strict.exit).toBe(6);
  });
});
