import type { CutFaces } from '../../worker/protocol';

type Part = CutFaces['faces'][number]['part'];

const WORDS: Readonly<Record<Part, string>> = {
  sculpt: 'the sculpt, foam later',
  skin: 'silicone',
  block: 'silicone',
  jacket: 'jacket',
};

/** What the fills of the cut mean. */
export function CutKey({ parts }: { parts: readonly Part[] }) {
  return (
    <ul className="legend" aria-label="The cut shows">
      {parts.map((part) => (
        <li key={part}>
          <i className={`cap ${part}`} aria-hidden="true" />
          {WORDS[part]}
        </li>
      ))}
    </ul>
  );
}
