/** Thrown where the memory of the library ran out: a smaller task may do, and the next call finds a fresh library. */
export class SolidsOutOfMemory extends Error {
  constructor(cause: unknown) {
    super('there is not enough memory for so fine a solid', { cause });
    this.name = 'SolidsOutOfMemory';
  }
}
