import { describe, expect, it } from 'vitest';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { call, document, documents, type Desk, type Document } from '../support/cliCall';
import { expectClose } from '../support/close';
import { everyNumber } from '../support/everyNumber';
import { ballOn, mushroomOn } from '../support/moldShapes';
import { stlBytes } from '../support/writeMesh';

const desk: Desk = {
  files: {
    'ball.stl': stlBytes(ballOn(50)),
    'mushroom.stl': stlBytes(mushroomOn(64)),
    'shop.json': JSON.stringify(SAMPLE_SHOP),
  },
};
const opened = (args: readonly string[]): Document => document(['opening', ...args], desk);

/** A ball of 50 mm radius, its lowest point at z 0, poured through a hole of 20 mm in its side. */
const BALL = ['ball.stl', '--file-unit', 'mm', '--accuracy', 'fast'];
const SIDE = [...BALL, '--base', 'closed', '--opening', '50,0,50', '--opening-diameter', '20mm'];
const UP = [...SIDE, '--pour-up', '+z'];
const TROLL = ['quay-troll-scan.stl', '--up', '+y', '--tall', '290 mm', '--accuracy', 'fast'];

const figure = ({ result }: Document, key: string): number => result[key] as number;
const codes = ({ findings }: Document, status: string): string[] =>
  findings.filter((one) => one.status === status).map(({ code }) => code);

/** Cap of a ball, cm3. */
const capCm3 = (radius: number, tall: number): number => (Math.PI * tall ** 2 * (3 * radius - tall)) / 3000;

describe('a ball poured through its side', () => {
  const called = call(['opening', ...UP, '--json'], desk);
  const [side] = documents(called) as [Document];

  it('keeps the air of the cap over the upper edge of the hole, and holds the cap under its lower edge', () => {
    // Facets and the columns cost a few parts in a thousand.
    expectClose(figure(side, 'trapped_cm3'), capCm3(50, 40), 4e-3);
    expectClose(figure(side, 'hold_cm3'), capCm3(50, 40), 4e-3);
    const [low, high] = side.range.trapped_cm3!;
    expect(low).toBeLessThanOrEqual(figure(side, 'trapped_cm3'));
    expect(high).toBeGreaterThanOrEqual(figure(side, 'trapped_cm3'));
    expect(side.result.trapped_is_lower_bound).toBe(true);
    const { measured_share: measured } = side.result.thickness_mm as { measured_share: number };
    expect(measured).toBeGreaterThan(0);
    expect(measured).toBeLessThanOrEqual(1);
  });

  it('has one pocket: its top is the top of the ball, and it shuts at the upper edge of the hole', () => {
    const [trap, ...more] = side.result.traps as { top_mm: number[]; saddle_mm: number[]; rise_mm: number }[];
    expect(more).toEqual([]);
    // The top is flat: a column off its middle by 2 mm is 0.04 mm lower.
    expect(Math.hypot(trap!.top_mm[0]!, trap!.top_mm[1]!)).toBeLessThan(2);
    expect(trap!.top_mm[2]).toBeCloseTo(100, 1);
    expect(trap!.saddle_mm[2]).toBeCloseTo(60, 1);
    expect(trap!.rise_mm).toBeCloseTo(40, 1);
  });

  it('one vent at that top frees it; one that is planned there leaves nothing', () => {
    const [vent, ...more] = side.result.vents as { at_mm: number[]; cures_cm3: number }[];
    expect(more).toEqual([]);
    expectClose(vent!.cures_cm3, capCm3(50, 40), 4e-3);
    expect(figure(side, 'left_cm3')).toBe(0);
    const vented = opened([...UP, '--vent', '0,0,100']);
    expect(figure(vented, 'trapped_cm3')).toBe(0);
    expect(vented.result.vents).toEqual([]);
    expect(vented.findings.map(({ code }) => code)).not.toContain('VENT_OFF_SURFACE');
  });

  it('the section across is the great circle, and the bald spot is the smaller limit', () => {
    expectClose(figure(side, 'largest_section_cm2'), 25 * Math.PI, 2e-3);
    expectClose(figure(side, 'opening_area_cm2'), Math.PI, 1e-12);
    expectClose(figure(side, 'opening_share'), 1 / 25, 2e-3);
    // A hundredth of 4 pi R^2 is a circle of 0.4 R.
    expectClose(figure(side, 'diameter_max_mm'), 20, 2e-3);
    expect(side.result.opening).toMatchObject({ placed_by: 'given', limit: 'bald area', normal: [1, 0, 0] });
    expect(figure(side, 'tilt_degrees')).toBeCloseTo(90, 6);
  });

  it('a smaller share of the section is the smaller limit: sqrt(share) of the ball', () => {
    const share = opened([...UP, '--opening-share', '0.01']);
    expectClose(figure(share, 'diameter_max_mm'), 10, 2e-3);
    expect(share.result.opening).toMatchObject({ limit: 'share of the section' });
  });

  it('the least width is not told while the pour is not known', () => {
    expect('diameter_min_mm' in side.result).toBe(false);
    expect(side.result.opening).toMatchObject({
      not_known: ['liquid_cm3', 'pour_within_s', 'mix_viscosity_pa_s'],
      verdict: 'time not checked',
    });
    expect(codes(side, 'unknown')).toContain('OPENING_SIZE');
  });

  it('the least width is that at which the air coming up lets just so much down (Wallis, by its formula)', () => {
    const root = 0.725 / (1 + (1.2 / 1070) ** 0.25);
    const mlS = 1e6 * root ** 2 * (Math.PI / 4) * 0.025 ** 2 * Math.sqrt(9.80665 * 0.025);
    const pour = opened([
      ...UP,
      ...['--liquid-volume', '400 cm3', '--pour-within', `${400 / mlS} s`, '--mix-viscosity', '1000 cP'],
    ]);
    expectClose(figure(pour, 'diameter_min_mm'), 25, 1e-6);
    expect(pour.result.opening).toMatchObject({ is_empty: true, verdict: 'too narrow to pour in time' });
    expect(codes(pour, 'look')).toContain('OPENING_BAND_EMPTY');
  });

  it('an opening that looks sideways is a Stop, and --strict ends in 6', () => {
    expect(codes(side, 'stop')).toContain('OPENING_UNDERSIDE');
    expect(called.exit).toBe(0);
    expect(call(['opening', ...UP, '--json', '--strict'], desk).exit).toBe(6);
  });

  it('without --pour-up the way the opening faces is up: then nothing is shut in', () => {
    const usual = opened(SIDE);
    expect(usual.result.up).toEqual([1, 0, 0]);
    expect(figure(usual, 'trapped_cm3')).toBe(0);
    expect(usual.assumptions.find(({ name }) => name === 'pour_up')).toMatchObject({ value: '1,0,0' });
  });

  it('a search finds that way, and says that it is the best', () => {
    const found = opened([...UP, '--search-up']);
    expect(Object.keys(found.result).slice(4, 8)).toEqual(['traps', 'trapped_cm3', 'vents', 'best_up']);
    const rows = found.result.attitudes as { is_today: boolean; is_best: boolean; trapped_cm3: number }[];
    expect(rows[0]).toMatchObject({ is_today: true, is_best: false });
    expect(rows.filter((row) => row.is_best)).toHaveLength(1);
    const [best] = rows.filter((row) => row.is_best);
    expect(best!.trapped_cm3).toBeLessThan(0.2);
    const up = found.result.best_up as [number, number, number];
    expectClose(Math.hypot(...up), 1, 1e-9);
    // The side the hole is on, at the least: lower than the hole's own edge nothing is shut in.
    expect(up[0]).toBeGreaterThan(0.9);
    expect('best_up' in side.result).toBe(false);
  });
});

describe('a mushroom pulled by its foot', () => {
  const MUSHROOM = ['mushroom.stl', '--file-unit', 'mm', '--accuracy', 'fast'];
  /** Stem of radius 10 under a cap of radius 30. */
  const [NECK_MM, BULB_MM] = [20 * Math.PI, 60 * Math.PI];
  interface Squeeze {
    neck_mm: number;
    bulb_mm: number;
    stretch: number;
  }
  const worst = (args: readonly string[]): Squeeze =>
    (opened([...MUSHROOM, ...args]).result.demold as { worst: Squeeze }).worst;
  const usual = worst([]);

  it('the cap has to pass the stem: girths of circles, and (1 - squash) of one over the other', () => {
    const { neck_mm, bulb_mm, stretch } = usual;
    expectClose(neck_mm, NECK_MM, 1e-2);
    expectClose(bulb_mm, BULB_MM, 1e-2);
    expectClose(stretch, (0.8 * bulb_mm) / neck_mm - 1, 1e-9);
    expectClose(worst(['--squash', '0 %']).stretch, bulb_mm / neck_mm - 1, 1e-9);
  });

  it('the rubber is let a third of what is typed; a stiff one asks for a slit', () => {
    const stiff = opened([...MUSHROOM, '--elongation', '140 %']);
    const demold = stiff.result.demold as {
      allowed_stretch: number;
      slit?: { length_mm: number; by_girth_mm: number };
    };
    expectClose(demold.allowed_stretch, 1.4 / 3, 1e-12);
    const { neck_mm, bulb_mm } = usual;
    // Two edges more of girth: ((1 - squash) bulb / (1 + allowed) - neck) / 2.
    expect(demold.slit!.length_mm).toBeGreaterThanOrEqual(demold.slit!.by_girth_mm);
    expectClose(demold.slit!.by_girth_mm, ((0.8 * bulb_mm) / (1 + 1.4 / 3) - neck_mm) / 2, 1e-9);
    expect(stiff.assumptions.map(({ name }) => name)).not.toContain('elongation_at_break');
  });

  it('a card of silicone brings its stretch along, and what is typed wins', () => {
    const shop = {
      ...SAMPLE_SHOP,
      silicones: [{ ...SAMPLE_SHOP.silicones[0]!, elongationAtBreak: 4.5 }],
    };
    const at: Desk = { files: { ...desk.files, 'shop.json': JSON.stringify(shop) } };
    const card = [...['opening', ...MUSHROOM, '--shop', 'shop.json'], '--silicone', 'Sample Silicone 25'];
    const allowed = (args: string[]): number =>
      (document([...card, ...args], at).result.demold as { allowed_stretch: number }).allowed_stretch;
    expectClose(allowed([]), 1.5, 1e-12);
    expectClose(allowed(['--elongation', '300']), 1, 1e-12);
  });
});

describe('the troll, from its scan', () => {
  const troll = opened([
    ...TROLL,
    ...['--shop', 'shop.json', '--foam', 'Sample Foam Light', '--mix-viscosity', '1.2 Pa s'],
  ]);

  it('answers with the keys of the contract, first and in its order', () => {
    expect(Object.keys(troll)).toEqual([
      ...['schema', 'inputs', 'assumptions', 'findings', 'result', 'range', 'because'],
    ]);
    expect(troll.schema).toBe('risewright/opening@1');
    expect(Object.keys(troll.result).slice(0, 11)).toEqual([
      ...['opening_area_cm2', 'largest_section_cm2', 'opening_share', 'diameter_min_mm', 'diameter_max_mm'],
      ...['traps', 'trapped_cm3', 'vents', 'thin', 'thickness_mm', 'demold'],
    ]);
    expect(Object.keys(troll.range)).toEqual(['trapped_cm3']);
  });

  it('holds no null and no number that is not finite', () => {
    expect(JSON.stringify(troll)).not.toMatch(/null/);
    expect([...everyNumber(troll)].filter(([, value]) => !Number.isFinite(value))).toEqual([]);
  });

  it('pours through its neck, upside down: liquid by free rise, pack and cavity over the density of its parts', () => {
    expect(troll.result.opening).toMatchObject({ placed_by: 'base', normal: [0, 0, -1] });
    const { freeRiseKgM3, partDensities } = SAMPLE_SHOP.foams[0]!;
    const liquid = 155 / (100 / partDensities!.aKgM3 + 55 / partDensities!.bKgM3);
    const size = document(['size', ...TROLL.slice(0, -2)]);
    // Rubber meets the pieces and not the specks: 0.6 of 4388 cm3.
    expectClose(
      figure(troll, 'liquid_cm3'),
      (1.3 * freeRiseKgM3 * (size.result.volume_cm3 as number)) / liquid,
      1e-3,
    );
  });

  it('the time to pour is the cream time of the card less mixing, carrying and margin, and is said', () => {
    const told = troll.assumptions.find(({ name }) => name === 'pour_within');
    expect(told).toMatchObject({ value: 40 - 20 - 5 - 5, unit: 's', from: 'data-sheet' });
  });

  it('numbers every place once and gives its tape distances', () => {
    const places = troll.result.places as Record<string, number | string>[];
    expect(places.map(({ n }) => n)).toEqual(places.map((_, i) => i + 1));
    expect(places[0]).toMatchObject({ kind: 'opening', up_mm: 0 });
    expect(places.filter(({ kind }) => kind === 'vent advised')).toHaveLength(
      (troll.result.vents as unknown[]).length,
    );
  });

  it('every check of the opening is among the findings, once', () => {
    for (const code of ['OPENING_SIZE', 'LIQUID_STAYS', 'AIR_TRAPPED', 'FLAT_CEILING', 'DEMOLD_STRETCH'])
      expect(troll.findings.filter((one) => one.code === code)).toHaveLength(1);
  });

  it('the same call gives the same bytes', () => {
    const args = ['opening', 'mushroom.stl', '--file-unit', 'mm', '--accuracy', 'fast', '--json'];
    expect(call(args, desk).out).toBe(call(args, desk).out);
  });
});
