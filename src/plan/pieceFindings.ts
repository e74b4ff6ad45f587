import type { PieceGroup, SolidMeasure } from '../geometry';
import { finding, type Place, type Problem } from '../problem';
import type { SizeFacts } from './sizeFacts';
import { statusOf } from './doubtStatus';
import { MM3_PER_CM3 } from './sizeDoubts';

/** The pieces of a scan, and what was decided of them. */
export const pieceFindings = (facts: SizeFacts): Problem[] => [...byRule(facts), ...byWish(facts)];

function byRule({ solid }: SizeFacts): Problem[] {
  const found: Problem[] = [];
  const { void: inner, island } = solid.byRole;
  const solidInside = solid.byRole['inner solid'];
  const bodies = countedBodies(solid);
  if (bodies > 1) found.push(finding('MULTI_SHELL', 'look', { part: 'bodies', count: bodies }));
  if (island.count > 0) {
    found.push(
      finding(
        'MULTI_SHELL',
        statusOf(island.heldMm3 / solid.volumeMm3),
        { part: 'islands', count: island.count, effectCm3: -island.heldMm3 / MM3_PER_CM3 },
        placeOf(island),
      ),
    );
  }
  const voids = inner.count - solid.wished.hollowed.count;
  if (voids > 0) {
    const volumeMm3 = inner.volumeMm3 - solid.wished.hollowed.volumeMm3;
    found.push(
      finding(
        'NESTED_SHELL',
        'look',
        {
          part: 'void',
          count: voids,
          effectCm3: volumeMm3 / MM3_PER_CM3,
          envelopeCm3: (solid.volumeMm3 - volumeMm3) / MM3_PER_CM3,
        },
        placeOf(inner),
      ),
    );
  }
  if (solidInside.count > 0 && isWholeInside(solid)) {
    found.push(
      finding(
        'NESTED_SHELL',
        'look',
        {
          part: 'solid',
          count: solidInside.count,
          effectCm3: -Math.abs(solidInside.volumeMm3) / MM3_PER_CM3,
          hollowCm3: (solid.volumeMm3 - Math.abs(solidInside.volumeMm3)) / MM3_PER_CM3,
        },
        placeOf(solidInside),
      ),
    );
  }
  if (solid.turnedPieces.count > 0)
    found.push(finding('INSIDE_OUT', 'fine', { count: solid.turnedPieces.count, effectCm3: 0 }));
  return found;
}

/** A solid that was taken for one inside another but sticks out counts like any other. */
const countedBodies = (solid: SolidMeasure): number =>
  solid.byRole.body.count -
  solid.wished.specks.count +
  (isWholeInside(solid) ? 0 : solid.byRole['inner solid'].count);

const isWholeInside = ({ method }: SolidMeasure): boolean => method === 'exact';

/** A row for every decision, so that none is forgotten. What could not be told of an effect is left out. */
function byWish({
  solid,
  shells,
  pieceEffects: { specks, filled, hollowed, leftOut },
}: SizeFacts): Problem[] {
  const found: Problem[] = solid.shells.flatMap((shell, n) => {
    const told = shells[n]!;
    if (!shell.isLeftOut) return [];
    const [x, y, z] = told.corner ?? [];
    return [
      finding(
        'PIECE_LEFT_OUT',
        'fine',
        {
          holdsCm3: told.holdsCm3,
          wideMm: told.extentsMm[0],
          deepMm: told.extentsMm[1],
          tallMm: told.extentsMm[2],
          ...(x === undefined ? {} : { xUnits: x, yUnits: y!, zUnits: z! }),
          ...effectOf(leftOut.get(shell.corner ?? -1)),
        },
        pointOf(told.middleMm),
      ),
    ];
  });
  const group = (what: 'specks' | 'filled' | 'hollowed', of: PieceGroup, mm3: number | undefined): void => {
    if (of.count > 0)
      found.push(
        finding('PIECES_TAKEN', 'fine', { part: what, count: of.count, ...effectOf(mm3) }, placeOf(of)),
      );
  };
  group('specks', solid.wished.specks, specks);
  group('filled', solid.byRole.filled, filled);
  group('hollowed', solid.wished.hollowed, hollowed);
  if (solid.wished.lost > 0) found.push(finding('PIECE_LOST', 'look', { count: solid.wished.lost }));
  return found;
}

const effectOf = (mm3: number | undefined): { effectCm3?: number } =>
  mm3 === undefined ? {} : { effectCm3: mm3 / MM3_PER_CM3 };

const placeOf = ({ middleMm }: PieceGroup): Place | undefined =>
  middleMm === undefined ? undefined : pointOf(middleMm);

const pointOf = ([xMm, yMm, zMm]: readonly [number, number, number]): Place => ({ xMm, yMm, zMm });
