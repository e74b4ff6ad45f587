import { say } from '../words/say';
import { batchRange, batchResult } from './batchJson';
import { findingJson } from './envelope';
import type { Column, Packs } from './packsCall';

type Json = Record<string, unknown>;

/** `columns[]`: each as the result of a batch of that pack, with what the packs are compared by; its own findings and range are in it. */
export function packsResult({ columns, reference }: Packs): Json {
  return {
    reference_pack: reference.packFactor,
    reference_from: reference.from,
    columns: columns.map(columnJson),
  };
}

function columnJson(column: Column): Json {
  if (column.refused !== undefined) {
    const { text, hint } = say(column.refused);
    return { pack_factor: column.packFactor, refused: { code: column.refused.code, text, hint } };
  }
  const { poured, compared, own } = column;
  const { stiffnessRatio } = compared;
  return {
    ...batchResult(poured),
    stiffness_ratio: stiffnessRatio.value,
    stiffness_range: [stiffnessRatio.low, stiffnessRatio.high],
    range: batchRange(poured.prepared),
    findings: own.map(findingJson),
  };
}
