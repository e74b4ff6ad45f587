import { useId, useState } from 'react';

interface KeptTextProps {
  label: string;
  text: string;
  onKeep: (text: string) => void;
}

/** A text of the shop, kept as it is typed, without blanks around it. */
export function KeptText({ label, text, onKeep }: KeptTextProps) {
  const id = useId();
  /** What stands in the box while it is typed into. */
  const [draft, setDraft] = useState<string>();
  return (
    <div className="qty">
      <label htmlFor={id}>{label}</label>
      <div className="in">
        <input
          id={id}
          className="w"
          type="text"
          autoComplete="off"
          value={draft ?? text}
          onChange={(e) => {
            setDraft(e.target.value);
            if (e.target.value.trim() !== text) onKeep(e.target.value.trim());
          }}
          onBlur={() => setDraft(undefined)}
        />
      </div>
    </div>
  );
}
