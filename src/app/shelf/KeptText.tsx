import { useState } from 'react';
import { TextField } from '../parts/TextField';

interface KeptTextProps {
  label: string;
  text: string;
  onKeep: (text: string) => void;
}

/** A text of the shop, kept as it is typed, without blanks around it. */
export function KeptText({ label, text, onKeep }: KeptTextProps) {
  /** What stands in the box while it is typed into. */
  const [draft, setDraft] = useState<string>();
  return (
    <TextField
      label={label}
      text={draft ?? text}
      onText={(typed) => {
        setDraft(typed);
        if (typed.trim() !== text) onKeep(typed.trim());
      }}
      onLeave={() => setDraft(undefined)}
    />
  );
}
