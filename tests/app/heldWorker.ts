import type { Ended, WorkerLike } from '../../src/worker/engine';
import { answer, type Desk } from '../../src/worker/answer';
import type { Answers, FromWorker, ToWorker } from '../../src/worker/protocol';
import { valueOf } from '../support/outcome';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

/** Stands in for a worker: answers with the real engine, but only when the test lets it. */
export class HeldWorker implements WorkerLike {
  static all: HeldWorker[] = [];
  onmessage: ((event: MessageEvent<FromWorker>) => void) | null = null;
  onfault: ((why: string) => void) | null = null;
  desk: Desk = {};
  inbox: ToWorker[] = [];
  ended = false;

  constructor() {
    HeldWorker.all.push(this);
  }

  postMessage(message: ToWorker): void {
    this.inbox.push(message);
  }

  terminate(): void {
    this.ended = true;
  }

  /** Says something about the oldest message. */
  say(said: Omit<FromWorker & { say: 'failed' }, 'id'>): void {
    this.tell({ ...said, id: this.inbox[0]!.id });
  }

  /** Answers the oldest message; or ends at some moment of its work, counted in words of progress. Gives how many there were. */
  work({ dieAt, end }: { dieAt?: number; end?: () => void } = {}): number {
    const { id, request, stop } = this.inbox[0]!;
    let moments = 0;
    const onProgress = (share: number): void => {
      if (moments++ === dieAt) throw new Died();
      this.tell({ id, say: 'progress', share });
    };
    try {
      const result = answer(this.desk, request, onProgress, () => stop?.[0] === 1);
      if (moments === dieAt) throw new Died();
      this.inbox.shift();
      this.tell({ id, say: 'answer', answer: result });
    } catch (thrown) {
      if (!(thrown instanceof Died)) throw thrown;
      end?.();
    }
    return moments;
  }

  private tell(data: FromWorker): void {
    this.onmessage?.({ data } as MessageEvent<FromWorker>);
  }
}

class Died extends Error {}

export const cube = {
  name: 'cube.stl',
  bytes: () => Promise.resolve(stlBytes(box([10, 10, 10])).slice().buffer),
};
export const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

export function volumeOf(ended: Ended<Answers['size']>): number {
  if (ended.how !== 'answered') throw new Error(`expected an answer, got ${ended.how}`);
  return valueOf(ended.answer).size.volumeCm3.value;
}
