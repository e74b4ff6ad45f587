import { addPoint, makeCells, nearestPoint } from './pointCells';

export interface Clusters {
  /** The mean of each cluster; a point alone keeps its place to the bit. */
  centers: Float64Array;
  /** Which cluster each point belongs to. */
  index: Int32Array;
}

/**
 * Groups points that lie within `reachMm` of a common seed, by true distance, and puts each group at its mean. Linear in the
 * points for a given crowding.
 *
 * No chains: a point belongs to the nearest seed within reach, never to a neighbor of a neighbor, so that no group is wider than
 * twice the reach however densely points lie. The mean and not the first point: corners that were each moved at random are nearer
 * to where they were on the average (by the root of their number) than any one of them. Seeds are found in two passes: the first
 * point of a crowd may stand at its edge and split it, so the means of a first grouping are taken as seeds, most crowded first, and
 * one that lies within reach of a chosen one is dropped.
 */
export function clusterPoints(points: Float64Array, reachMm: number): Clusters {
  const first = meansOf(points, groupByFirst(points, reachMm));
  return meansOf(points, groupBySeeds(points, reachMm, seedsAmong(first, reachMm)));
}

interface Groups {
  index: Int32Array;
  count: number;
}

/** A point that nothing chosen is near becomes a seed; the others go to the nearest seed so far. */
function groupByFirst(points: Float64Array, reachMm: number): Groups {
  const cells = makeCells(points, reachMm);
  const index = new Int32Array(points.length / 3);
  let count = 0;
  for (let i = 0; i < index.length; i++) {
    const near = nearestPoint(cells, points[3 * i]!, points[3 * i + 1]!, points[3 * i + 2]!);
    if (near >= 0) index[i] = index[near]!;
    else {
      index[i] = count++;
      addPoint(cells, i);
    }
  }
  return { index, count };
}

interface Means extends Clusters {
  members: Int32Array;
}

function meansOf(points: Float64Array, { index, count }: Groups): Means {
  const members = new Int32Array(count);
  for (const group of index) members[group]!++;
  // Sums of differences from a member, so that equal points give their own place to the bit.
  const origin = new Int32Array(count);
  for (let i = index.length - 1; i >= 0; i--) origin[index[i]!] = i;
  const centers = new Float64Array(3 * count);
  for (let i = 0; i < index.length; i++) {
    const group = index[i]!;
    for (let k = 0; k < 3; k++)
      centers[3 * group + k]! += points[3 * i + k]! - points[3 * origin[group]! + k]!;
  }
  for (let group = 0; group < count; group++)
    for (let k = 0; k < 3; k++)
      centers[3 * group + k] = points[3 * origin[group]! + k]! + centers[3 * group + k]! / members[group]!;
  return { centers, index, members };
}

/** The means, most crowded first, less those within reach of one taken before. */
function seedsAmong({ centers, members }: Means, reachMm: number): Float64Array {
  const order = byCrowding(members);
  const cells = makeCells(centers, reachMm);
  const seeds: number[] = [];
  for (const group of order) {
    const [x, y, z] = [centers[3 * group]!, centers[3 * group + 1]!, centers[3 * group + 2]!];
    if (nearestPoint(cells, x, y, z) >= 0) continue;
    addPoint(cells, group);
    seeds.push(x, y, z);
  }
  return Float64Array.from(seeds);
}

/** Counting sort: the larger first, equals in order. */
function byCrowding(members: Int32Array): Int32Array {
  let most = 0;
  for (const many of members) most = Math.max(most, many);
  const start = new Int32Array(most + 2);
  for (const many of members) start[most - many + 1]!++;
  for (let i = 1; i < start.length; i++) start[i]! += start[i - 1]!;
  const order = new Int32Array(members.length);
  for (let group = 0; group < members.length; group++) order[start[most - members[group]!]!++] = group;
  return order;
}

/** Every point to the nearest seed within reach; one that has none stays by itself. */
function groupBySeeds(points: Float64Array, reachMm: number, seeds: Float64Array): Groups {
  const cells = makeCells(seeds, reachMm);
  for (let seed = 0; seed < seeds.length / 3; seed++) addPoint(cells, seed);
  const groupOf = new Int32Array(seeds.length / 3).fill(-1);
  const index = new Int32Array(points.length / 3);
  let count = 0;
  for (let i = 0; i < index.length; i++) {
    const seed = nearestPoint(cells, points[3 * i]!, points[3 * i + 1]!, points[3 * i + 2]!);
    if (seed < 0) index[i] = count++;
    else {
      if (groupOf[seed]! < 0) groupOf[seed] = count++;
      index[i] = groupOf[seed]!;
    }
  }
  return { index, count };
}
