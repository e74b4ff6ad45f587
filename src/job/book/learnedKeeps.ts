import { openingKeeps, type KeptByOpening, type TrimmedPour } from '../../yield';
import type { BookRow } from './bookRow';
import type { CheckedPour } from './checkedPours';
import { cavityOf, type Evidence } from './evidence';
import type { LearnedFoam } from './learnFoam';
import { soundOnly, type LeftOut } from './soundOnly';

/** What each opening keeps of the overpack, from full pours with a weighed trim, of every foam whose free rise is known. */
export function learnedKeeps(
  pours: readonly CheckedPour[],
  rows: readonly BookRow[],
  foams: readonly LearnedFoam[],
): { keeps: KeptByOpening[]; leftOut: LeftOut[] } {
  const trimmed = pours.flatMap(({ no, sound }): Evidence<TrimmedPour>[] => {
    const { foam, pack, opening, trimG, filled } = sound;
    const freeRise = foams.find((one) => one.foam === foam)?.freeRise;
    const cavityCm3 = cavityOf(sound, rows);
    if (filled !== 'full' || opening === undefined || pack === undefined || trimG === undefined) return [];
    if (freeRise === undefined || cavityCm3 === undefined) return [];
    const { freeRiseKgM3, uShare } = freeRise;
    const known = { freeRiseKgM3: freeRiseKgM3.value, uFreeRiseShare: uShare };
    return [{ no, is: { opening, packFactor: pack, ...known, cavityCm3, trimG } }];
  });
  const { used, leftOut } = soundOnly(trimmed, 'opening', (pour) => openingKeeps([pour]));
  const keeps = openingKeeps(used);
  if (!keeps.ok) throw new Error(`learnedKeeps: sound rows refused with ${keeps.problem.code}`);
  return { keeps: keeps.value, leftOut };
}
