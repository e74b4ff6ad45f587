import { newId } from '../../store';
import type { KeptSource } from './keptSource';
import capsule from '../../../sample-meshes/capsule-r20-l60.stl?url';
import hollow from '../../../sample-meshes/hollow-sphere-50-44.stl?url';
import eel from '../../../sample-meshes/lamp-eel-scan.stl?url';
import hand from '../../../sample-meshes/lighthouse-hand-scan.stl?url';
import troll from '../../../sample-meshes/quay-troll-scan.stl?url';
import rock from '../../../sample-meshes/singing-rock-scan.obj?url';
import sphere from '../../../sample-meshes/sphere-r50.stl?url';
import torus from '../../../sample-meshes/torus-r50-r12.stl?url';

export interface SampleScan {
  name: string;
  title: string;
  about: string;
  url: string;
}

/** Made by `sample-meshes/generate.mjs`; nobody's real sculpt. */
export const SAMPLE_SCANS: readonly SampleScan[] = [
  {
    name: 'quay-troll-scan.stl',
    title: 'Quay Troll head',
    url: troll,
    about:
      'a made-up sculpt as a scanner leaves it: unit lost, y up, neck open, holes and specks. A tape reads 290.85 mm tall',
  },
  {
    name: 'lighthouse-hand-scan.stl',
    title: "Lighthouse Giant's hand",
    url: hand,
    about: 'in mm, z up; the thumb is a shell of its own that reaches into the palm, facets are turned over',
  },
  {
    name: 'singing-rock-scan.obj',
    title: 'Singing Rock',
    url: rock,
    about: 'in inches, z up; inside out, and the board it stands on is in the scan',
  },
  {
    name: 'lamp-eel-scan.stl',
    title: 'Lamp Eel',
    url: eel,
    about: '3 % too small, z up; its fin is a sheet without thickness. A tape reads 520 mm wide',
  },
  { name: 'sphere-r50.stl', title: 'Sphere', url: sphere, about: 'radius 50 mm, z up' },
  { name: 'capsule-r20-l60.stl', title: 'Capsule', url: capsule, about: '100 mm tall, radius 20 mm, z up' },
  {
    name: 'torus-r50-r12.stl',
    title: 'Ring',
    url: torus,
    about: '24 mm tall, ring radius 50 mm, tube radius 12 mm',
  },
  {
    name: 'hollow-sphere-50-44.stl',
    title: 'Hollow sphere',
    url: hollow,
    about: 'radius 50 mm outside, 44 mm inside',
  },
];

export const sourceOfSample = ({ name, url }: SampleScan): KeptSource => ({
  id: newId(),
  name,
  bytes: async () => (await fetch(url)).arrayBuffer(),
});

export const sourceOfFile = (file: File): KeptSource => ({
  id: newId(),
  name: file.name,
  byteCount: file.size,
  bytes: () => file.arrayBuffer(),
});
