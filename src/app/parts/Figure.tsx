/** The heaviest thing in its section. A sentence is set smaller and may wrap; a figure may not. */
export function Figure({ value, unit }: { value: string; unit: string }) {
  return (
    <span className="fig">
      {value} <small>{unit}</small>
    </span>
  );
}

export const Verdict = ({ children }: { children: React.ReactNode }) => (
  <span className="fig s">{children}</span>
);
