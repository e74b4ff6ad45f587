import type { Persistence } from '../../store';
import { KEPT_NOWHERE } from '../../words/storeWords';
import { PlainHttp } from '../offline/PlainHttp';
import { VersionLine } from '../offline/VersionLine';
import { dayWords } from '../words/dayWords';
import { BackUpButton } from './BackUpButton';
import { useShop } from './shopContext';

const PERSISTENCE = {
  kept: 'Asked the browser to keep it: yes.',
  refused: 'Asked the browser to keep it: no, it may clear it when room gets short.',
  unknown: 'This browser cannot be asked to keep it.',
} as const;

const keptHere = (persistence: Persistence | undefined): string =>
  `Kept on this device only; nothing leaves it. ${persistence === undefined ? 'The browser was not yet asked to keep it.' : PERSISTENCE[persistence]}`;

/** Where the data is, when it was backed up last, and which version this is. */
export function Foot() {
  const { view, choice, store, persistence } = useShop();
  const { lastBackup } = view ?? {};
  return (
    <footer className="foot">
      <p>
        {choice === 'sample' && 'The sample shop, apart from yours. '}
        {store.keeps === 'page' ? KEPT_NOWHERE : keptHere(persistence)}
      </p>
      <p className="verbs">
        <span>{lastBackup === undefined ? 'No backup yet.' : `Last backup: ${dayWords(lastBackup)}.`}</span>
        <BackUpButton />
      </p>
      <VersionLine />
      <PlainHttp />
      <p>
        <a className="act" href="./third-party.txt" target="_blank" rel="noreferrer">
          What others wrote, and their licenses
        </a>
      </p>
    </footer>
  );
}
