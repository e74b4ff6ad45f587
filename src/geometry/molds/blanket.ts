import { bad, good, type Outcome } from '../../problem';
import { jacketedReachMm, measureJacketed, partsUnderJacket, thickestIn } from './jacketed';
import type { MoldBody, MoldSettings, MoldShape, MoldType, MoldWork, NamedVolume } from './moldType';
import { BASE, JACKETED, length, parts, PRACTICE } from './parameters';
import { numberIn } from './settle';

/**
 * The sculpt wrapped, a clay blanket laid over it, a rigid jacket built on the clay; then the clay is taken out and rubber poured into the gap
 * (documented for a marble bust: Maish and Risser 2002, J. Am. Inst. Conserv. 41(2), article 3). The rubber takes the place of the clay, so the clay that
 * comes out, weighed, tells the rubber: a check that costs nothing.
 */
export const BLANKET: MoldType = {
  key: 'blanket',
  title: 'Poured skin',
  goodFor: 'An even skin in one pour, without brushing; the clay blanket is weighed as a check.',
  parameters: [
    BASE,
    parts('Pieces of the jacket', 2),
    length('skinMm', 'Blanket thickness', 'skin', [10, 2, 40], `8 to 15 mm, ${PRACTICE}`),
    ...JACKETED,
    length('funnelMm', 'Pour funnel, diameter', 'funnel', [20, 5, 80], `15 to 20 mm, ${PRACTICE}`, true),
    length(
      'riserTallMm',
      'Height of funnel and risers over the jacket',
      'riser-tall',
      [45, 0, 300],
      `30 to 60 mm, ${PRACTICE}`,
      true,
    ),
    {
      key: 'risers',
      label: 'Risers where air would be trapped',
      flag: 'risers',
      kind: 'count',
      default: 2,
      low: 0,
      high: 30,
      from: `one at every highest place of the gap, ${PRACTICE}; two taken until the traps are looked for`,
      isFine: true,
    },
    length('riserMm', 'Riser, diameter', 'riser-diameter', [7, 2, 30], `6 to 8 mm, ${PRACTICE}`, true),
  ],
};

export const BLANKET_WORK: MoldWork = { reachMm: jacketedReachMm, build };

function build(body: MoldBody, settings: MoldSettings): Outcome<MoldShape> {
  const { field } = body;
  if (field === undefined) return bad('MOLD_NEEDS_SURFACE', { what: 'a skin' });
  const measured = measureJacketed({ ...body, field }, settings);
  if (!measured.ok) return measured;
  const { insideMm3, shape, skinMm } = measured.value;
  const { parts: blanket, voids, voidMm3 } = partsUnderJacket(measured.value, settings, 'gap');
  const clayMm3 = sumOf(blanket);
  const risersMm3 = risersOf(settings);
  const rubber = [...blanket, { name: 'funnel and risers', volumeMm3: risersMm3 }];
  const step = { sculptMm3: shape.sculptMm3, voidMm3 };
  return good({
    ...shape,
    key: BLANKET.key,
    settings,
    rubber,
    rubberMm3: clayMm3 + risersMm3,
    clay: [{ name: 'clay blanket', volumeMm3: clayMm3 }],
    voids,
    fillings: [
      { ...step, when: 'clay under the jacket', rubberMm3: 0, clayMm3, containerMm3: insideMm3 },
      {
        ...step,
        when: 'rubber poured',
        rubberMm3: clayMm3 + risersMm3,
        clayMm3: 0,
        containerMm3: insideMm3 + risersMm3,
      },
    ],
    wallMm: skinMm,
    thickestMm: thickestIn(shape, skinMm),
  });
}

const sumOf = (volumes: readonly NamedVolume[]): number =>
  volumes.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0);

/** Funnel and risers stand on the gap: through the jacket and over it, full of rubber. */
function risersOf(settings: MoldSettings): number {
  const tallMm = numberIn(settings, 'jacketMm') + numberIn(settings, 'riserTallMm');
  const across = (key: string): number => (Math.PI / 4) * numberIn(settings, key) ** 2;
  return tallMm * (across('funnelMm') + numberIn(settings, 'risers') * across('riserMm'));
}
