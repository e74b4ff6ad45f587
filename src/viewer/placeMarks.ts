import type { Vector } from '../geometry';
import type { Eye } from './eye';
import type { Px } from './px';
import type { Mark } from './mark';
import { openSeats, seatLabels, type LabelSeats } from './seatLabels';

/** Facing away by more than this is far. */
const FAR = -0.05;

/** Everything that is moved with each frame, looked up once. */
export interface MarkSeats {
  marks: readonly Mark[];
  groups: readonly SVGGElement[];
  parts: readonly Readonly<Record<Part, SVGElement | null>>[];
  joint: SVGLineElement | null;
  labels: LabelSeats;
  svg: SVGSVGElement;
}

const PARTS = ['rise', 'ring', 'leader', 'dot', 'box'] as const;
type Part = (typeof PARTS)[number];

export function seatMarks(svg: SVGSVGElement, marks: readonly Mark[]): MarkSeats {
  const groups = Array.from(svg.querySelectorAll<SVGGElement>(':scope > g'));
  const parts = groups.map(
    (group) =>
      Object.fromEntries(PARTS.map((part) => [part, group.querySelector(`[data-part=${part}]`)])) as Record<
        Part,
        SVGElement | null
      >,
  );
  return {
    marks,
    groups,
    parts,
    joint: svg.querySelector<SVGLineElement>('.joint'),
    labels: openSeats(
      groups.map((group) => Number(group.querySelector('rect')?.width.baseVal.value ?? 0) / 2),
    ),
    svg,
  };
}

const px: Px = { x: 0, y: 0 };
const end: Px = { x: 0, y: 0 };

/** Puts every mark where the eye sees it. */
export function placeMarks(seats: MarkSeats | undefined, eye: Eye, hidden: ReadonlySet<string>): void {
  if (seats === undefined) return;
  const { marks, labels, joint, svg } = seats;
  const card = { width: svg.clientWidth, height: svg.clientHeight };
  marks.forEach((mark, i) => {
    eye.seen(mark.at, px);
    labels.dots[2 * i] = px.x;
    labels.dots[2 * i + 1] = px.y;
    if (joint === null || i > 1) return;
    joint.setAttribute(`x${i + 1}`, String(px.x));
    joint.setAttribute(`y${i + 1}`, String(px.y));
  });
  seatLabels(labels, card);
  marks.forEach((mark, i) => placeOne(seats, i, eye, hidden.has(mark.label)));
}

function placeOne({ marks, groups, parts, labels }: MarkSeats, i: number, eye: Eye, isHidden: boolean): void {
  const [mark, group, part] = [marks[i]!, groups[i], parts[i]];
  const [x, y] = [labels.dots[2 * i]!, labels.dots[2 * i + 1]!];
  if (group === undefined || part === undefined) return;
  if (mark.isRow !== true) return group.setAttribute('transform', `translate(${x} ${y})`);
  const isFar = isHidden || (mark.normal !== undefined && eye.towards(mark.normal) < FAR);
  group.toggleAttribute('data-far', isFar);
  const [labelX, labelY] = [labels.labels[2 * i]!, labels.labels[2 * i + 1]!];
  part.dot?.setAttribute('transform', `translate(${x} ${y})`);
  part.box?.setAttribute('transform', `translate(${labelX} ${labelY})`);
  setLine(part.leader, x, y, labelX, labelY);
  if (mark.upTo !== undefined) {
    eye.seen(mark.upTo, end);
    setLine(part.rise, x, y, end.x, end.y);
  }
  if (part.ring !== null && mark.ringRadius !== undefined && mark.normal !== undefined)
    setRing(part.ring, eye, { at: mark.at, normal: mark.normal, radius: mark.ringRadius });
}

function setLine(line: SVGElement | null, x1: number, y1: number, x2: number, y2: number): void {
  if (line === null) return;
  line.setAttribute('x1', String(x1));
  line.setAttribute('y1', String(y1));
  line.setAttribute('x2', String(x2));
  line.setAttribute('y2', String(y2));
}

/** A level ring seen aslant is an ellipse: as wide as it is, and flattened along its axis. */
function setRing(
  ring: SVGElement,
  eye: Eye,
  { at, normal, radius }: { at: Vector; normal: Vector; radius: number },
): void {
  eye.seen(at, px);
  eye.seen([at[0] + normal[0], at[1] + normal[1], at[2] + normal[2]], end);
  const turnDegrees = (Math.atan2(end.y - px.y, end.x - px.x) * 180) / Math.PI;
  const wide = radius * eye.pxPerUnit();
  ring.setAttribute('rx', String(Math.max(0.5, wide * Math.abs(eye.towards(normal)))));
  ring.setAttribute('ry', String(wide));
  ring.setAttribute('transform', `translate(${px.x} ${px.y}) rotate(${turnDegrees})`);
}
