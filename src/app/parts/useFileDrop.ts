import { useEffect, useRef } from 'react';
import type { KeptSource } from '../ticket/keptSource';
import { sourceOfFile } from '../ticket/sampleScans';

/** Takes a file dropped anywhere on the page: left alone, the browser would open it and the ticket would be gone. */
export function useFileDrop(onOpen: (source: KeptSource) => void): void {
  const open = useRef(onOpen);
  useEffect(() => {
    open.current = onOpen;
  });
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (event.dataTransfer?.types.includes('Files') !== true) return;
      event.preventDefault();
      document.body.classList.add('dragged');
    };
    const out = (event: DragEvent): void => {
      if (event.relatedTarget === null) document.body.classList.remove('dragged');
    };
    const drop = (event: DragEvent): void => {
      document.body.classList.remove('dragged');
      const file = event.dataTransfer?.files[0];
      if (file === undefined) return;
      event.preventDefault();
      open.current(sourceOfFile(file));
    };
    addEventListener('dragover', over);
    addEventListener('dragleave', out);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('dragleave', out);
      removeEventListener('drop', drop);
    };
  }, []);
}
