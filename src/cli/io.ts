import type { Crew } from '../geometry';

/** The only way out of a command: tests give their own, `main.ts` gives the process's. */
export interface Io {
  /** Data. Nothing else goes to stdout. */
  out: (text: string) => void;
  /** Messages and progress, to stderr. */
  note: (text: string) => void;
  readFile: (path: string) => Uint8Array;
  /** How many bytes a file has, without reading it; 0 for a pipe. */
  fileBytes: (path: string) => number;
  readStdin: () => Uint8Array;
  /** A file of the sample-meshes folder that comes with the program. */
  readSample: (name: string) => Uint8Array;
  /** Is there a file, a folder or a link of that name? */
  exists: (path: string) => boolean;
  /** With the folders above it; one that is there already is fine. */
  makeFolder: (path: string) => void;
  writeFile: (path: string, data: string | Uint8Array) => void;
  /** Whole or not at all: what is there stays until all of the new one is. */
  replaceFile: (path: string, data: string) => void;
  /** Starts helping threads for long measures: so many that with the caller's there are this many, or as the machine has cores. */
  startCrew?: (threads?: number) => Crew;
  /** Is stderr a terminal? Only then is progress drawn. */
  isTerminal: boolean;
}
