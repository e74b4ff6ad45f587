import { useEffect, useMemo } from 'react';
import { useThree } from '@react-three/fiber';
import { BufferAttribute, BufferGeometry, type ShaderMaterial } from 'three';
import { capMaterial } from './capMaterial';
import { faceTriangles, outlineEnds } from './faceTriangles';
import { lineMaterial, lineShape } from './inkLines';
import { placedBy } from './ShellMesh';
import type { MmSeat, ShownCut } from './shown';
import { useCardSize } from './useCardSize';

/** Drawn before the surfaces, the nearest first: what they hide need not be drawn. */
const FIRST = -100;

/** Width of the outline of a cut face. */
const OUTLINE_PX = 1.5;

/** What the cut shows: every part filled and outlined in ink, the inner ones over the outer ones. */
export function CutFaceMesh({ cut, seat }: { cut: ShownCut; seat: MmSeat }) {
  const ratio = useThree((state) => state.viewport.dpr);
  const made = useMemo(() => makeFaces(cut), [cut]);
  useEffect(() => made.dispose, [made]);
  useEffect(() => made.fills.forEach(({ fill }) => (fill.uniforms.ratio!.value = ratio)), [made, ratio]);
  useCardSize(made.ink);
  return (
    <group {...placedBy(seat)}>
      {made.fills.map(({ shape, fill }, i) => (
        <mesh key={i} geometry={shape} material={fill} renderOrder={FIRST + 1 + i} dispose={null} />
      ))}
      <mesh
        geometry={made.lines}
        material={made.ink}
        renderOrder={FIRST}
        dispose={null}
        frustumCulled={false}
      />
    </group>
  );
}

interface MadeFaces {
  fills: { shape: BufferGeometry; fill: ShaderMaterial }[];
  lines: BufferGeometry;
  ink: ShaderMaterial;
  dispose: () => void;
}

function makeFaces({ axis, faces }: ShownCut): MadeFaces {
  const fills = faces.map(({ look, outlines }, i) => {
    const { positions, index } = faceTriangles(axis, outlines);
    const shape = new BufferGeometry();
    shape.setAttribute('position', new BufferAttribute(positions, 3));
    shape.setIndex(new BufferAttribute(index, 1));
    return { shape, fill: capMaterial(look, faces.length - i) };
  });
  const lines = lineShape(outlineEnds(faces.flatMap(({ outlines }) => outlines)));
  const ink = lineMaterial(OUTLINE_PX);
  const dispose = (): void => {
    for (const { shape, fill } of fills) {
      shape.dispose();
      fill.dispose();
    }
    lines.dispose();
    ink.dispose();
  };
  return { fills, lines, ink, dispose };
}
