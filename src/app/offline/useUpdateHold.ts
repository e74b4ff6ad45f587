import { useEffect } from 'react';
import { updateGate } from './updateGate';

/** While `is`, an update that was asked for waits: no update starts the page anew in what is being saved. A reason to offer none is told to `updateGate` itself. */
export function useUpdateHold(is: boolean): void {
  useEffect(() => (is ? updateGate.hold() : undefined), [is]);
}
