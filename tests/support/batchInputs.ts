import type { BatchInputs } from '../../src/yield';

export const given = (value: number): { value: number; from: 'given' } => ({ value, from: 'given' });

/** T1 of the core model. */
export const t1: BatchInputs = {
  cavityCm3: given(5200),
  riserCm3: given(300),
  freeRiseKgM3: { value: 128.147707, from: 'cup-test' },
  ratio: { a: 52, b: 100, by: 'mass' },
  packFactor: given(1.3),
  ventsG: given(10),
  gasLossShare: given(0.01),
  residueG: given(30),
  scaleStepG: given(1),
};

/** A batch with nothing said that can be assumed. */
export const bare: BatchInputs = {
  cavityCm3: given(5200),
  freeRiseKgM3: { value: 160.184634, from: 'data-sheet' },
  ratio: { a: 52, b: 100, by: 'mass' },
};
