import { useId } from 'react';

interface FileButtonProps {
  label: string;
  /** Endings and kinds that are offered. */
  accept: string;
  className?: string;
  onFile: (file: File) => void;
}

/** A native file input with its label as the target. */
export function FileButton({ label, accept, className = 'act', onFile }: FileButtonProps) {
  const id = useId();
  return (
    <span className="file">
      <input
        id={id}
        type="file"
        className="sr"
        accept={accept}
        onChange={(e) => {
          const file = e.target.files?.[0];
          if (file !== undefined) onFile(file);
          e.target.value = '';
        }}
      />
      <label htmlFor={id} className={className}>
        {label}
      </label>
    </span>
  );
}
