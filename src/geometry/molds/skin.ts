import { bad, good, type Outcome } from '../../problem';
import { jacketedReachMm, measureJacketed, partsUnderJacket, thickestIn } from './jacketed';
import type { MoldBody, MoldSettings, MoldShape, MoldType, MoldWork } from './moldType';
import { BASE, JACKETED, length, parts, PRACTICE } from './parameters';

/**
 * Thickened rubber brushed on in coats, the first one thin for the detail, then a rigid jacket. Its volume is that of the sculpt grown by the
 * thickness, above the board, less the sculpt; area times thickness is 11 % low on a ball and far off where undercuts are filled.
 */
export const SKIN: MoldType = {
  key: 'skin',
  title: 'Brushed skin',
  goodFor: 'Least rubber, any size; coats take an afternoon and the thickness depends on the hand.',
  parameters: [
    BASE,
    parts('Pieces of the jacket', 2),
    length('skinMm', 'Skin thickness', 'skin', [6, 1, 40], `4 to 10 mm, ${PRACTICE}`),
    length('firstCoatMm', 'First coat', 'first-coat', [0.75, 0.2, 3], `0.5 to 1 mm, ${PRACTICE}`, true),
    length('coatMm', 'Each further coat', 'coat', [1.5, 0.3, 5], `1 to 3 mm, ${PRACTICE}`, true),
    ...JACKETED,
  ],
};

export const SKIN_WORK: MoldWork = { reachMm: jacketedReachMm, build };

function build(body: MoldBody, settings: MoldSettings): Outcome<MoldShape> {
  const { field } = body;
  if (field === undefined) return bad('MOLD_NEEDS_SURFACE', { what: 'a skin' });
  const measured = measureJacketed({ ...body, field }, settings, (body.coatsMm ?? []).slice(0, -1));
  if (!measured.ok) return measured;
  const { insideMm3, shape, skinMm } = measured.value;
  const { parts: rubber, voids, voidMm3 } = partsUnderJacket(measured.value, settings, 'skin');
  const rubberMm3 = rubber.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0);
  return good({
    ...shape,
    key: SKIN.key,
    settings,
    rubber,
    rubberMm3,
    clay: [],
    voids,
    fillings: [
      {
        when: 'under the jacket',
        rubberMm3,
        clayMm3: 0,
        sculptMm3: shape.sculptMm3,
        voidMm3,
        containerMm3: insideMm3,
      },
    ],
    coats: measured.value.coats,
    wallMm: skinMm,
    thickestMm: thickestIn(shape, skinMm),
  });
}
