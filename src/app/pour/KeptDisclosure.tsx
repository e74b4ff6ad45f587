import { useState, type ReactNode } from 'react';
import { Disclosure } from '../parts/Disclosure';

interface KeptDisclosureProps {
  title?: string;
  isWorking: boolean;
  /** Nothing: there is nothing to open. */
  children: ReactNode;
}

/** What can be opened stays open while its figures are worked out anew, and shows none of before. */
export function KeptDisclosure({ title, isWorking, children }: KeptDisclosureProps) {
  const has = children !== undefined && children !== null && children !== false;
  const [had, setHad] = useState(has);
  if (!isWorking && had !== has) setHad(has);
  if (!has && !(isWorking && had)) return null;
  return (
    <Disclosure {...(title === undefined ? {} : { title })}>
      {has ? children : <p>Working out …</p>}
    </Disclosure>
  );
}
