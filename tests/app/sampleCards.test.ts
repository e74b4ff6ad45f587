import { expect, it } from 'vitest';
import { SAMPLE_CARDS } from '../../src/app/ticket/sampleCards';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { readQuantity } from '../../src/units';
import { expectClose } from '../support/close';

it.each(SAMPLE_CARDS.map((card) => [card.name, card] as const))(
  'the page offers %s with the figures of the sample shop',
  (name, { by, texts }) => {
    const foam = SAMPLE_SHOP.foams.find((f) => f.name === name)!;
    const read = (field: 'freeRise' | 'densityA' | 'densityB'): number => {
      const { text, unit } = texts[field]!;
      const value = readQuantity(text, 'density', { bareUnit: unit });
      if (value.kind !== 'one') throw new Error(`expected one reading of ${text}, got ${value.kind}`);
      return value.value;
    };
    expectClose(read('freeRise'), foam.freeRiseKgM3, 1e-12, 'free rise');
    expect({ a: Number(texts.partsA!.text), b: Number(texts.partsB!.text), by }).toEqual(foam.ratio);
    if (foam.partDensities === undefined) expect(texts.densityA!.text).toBe('');
    else {
      expectClose(read('densityA'), foam.partDensities.aKgM3, 1e-12, 'density of A');
      expectClose(read('densityB'), foam.partDensities.bKgM3, 1e-12, 'density of B');
    }
  },
);
