/** Numbers whose count is not known beforehand, in typed memory that doubles. */
export class Growing<T extends Float64Array | Float32Array | Int32Array> {
  length = 0;
  private held: T;

  constructor(first: T) {
    this.held = first;
  }

  push3(a: number, b: number, c: number): void {
    if (this.length + 3 > this.held.length) {
      const Kind = this.held.constructor as new (length: number) => T;
      const more = new Kind(2 * this.held.length + 3);
      more.set(this.held);
      this.held = more;
    }
    this.held[this.length++] = a;
    this.held[this.length++] = b;
    this.held[this.length++] = c;
  }

  at(n: number): number {
    return this.held[n]!;
  }

  taken(): T {
    return this.held.slice(0, this.length) as T;
  }
}
