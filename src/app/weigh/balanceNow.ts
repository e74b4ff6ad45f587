import { massBalance, type MassBalance } from '../../yield';
import type { WeighRead } from './pourOfWeigh';

/** The mass balance of what stands in the boxes. A mix that nobody weighed is A and B as they were weighed at the bench, with the color. */
export function balanceNow({ draft, parts }: WeighRead, stepG: number): MassBalance | undefined {
  const { residueG, castingG, trimG, colorG = 0 } = draft;
  const mixedG =
    draft.mixedG ?? (parts !== undefined && parts.from !== 'plan' ? parts.aG + parts.bG + colorG : undefined);
  const weighed = Object.entries({ mixedG, residueG, castingG, trimG }).filter(
    ([, massG]) => massG !== undefined,
  );
  const balance = massBalance(Object.fromEntries(weighed), stepG);
  return balance.ok ? balance.value : undefined;
}
