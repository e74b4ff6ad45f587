import type { Nav } from '../useRoute';
import { useShop } from '../shop/shopContext';
import { FileButton } from '../parts/FileButton';
import { Link } from '../parts/Link';
import { SCAN_ENDINGS } from './scanNames';

interface ShelfHeadProps {
  nav: Nav;
  /** Then a new piece is the next step, and the one solid button. */
  isEmpty: boolean;
  onNew: () => void;
  onScan: (file: File) => void;
  onBackup: (file: File) => void;
  onAfresh: () => void;
}

/** Whose shop it is, and what can be begun. */
export function ShelfHead({ nav, isEmpty, onNew, onScan, onBackup, onAfresh }: ShelfHeadProps) {
  const { view, choice } = useShop();
  const name = view?.core.name ?? '';
  const goTo = (shop: 'own' | 'sample'): void => nav.go({ at: 'shelf' }, shop);
  return (
    <header className="head">
      {choice === 'sample' ? (
        <p className="of">{name === '' ? '' : `${name}, `}sample shop, all invented</p>
      ) : (
        name !== '' && <p className="of">{name}</p>
      )}
      <h1 tabIndex={-1}>What have we got?</h1>
      <div className="do">
        <button type="button" className={isEmpty ? 'btn' : 'act'} onClick={onNew}>
          New piece
        </button>
        <FileButton label="Begin with a scan" accept={SCAN_ENDINGS} onFile={onScan} />
        <Link nav={nav} to={{ at: 'shopBook' }} className="act">
          Open the Book
        </Link>
        <FileButton label="Bring in a backup" accept=".json,application/json" onFile={onBackup} />
        {choice === 'own' ? (
          <button type="button" className="act" onClick={() => goTo('sample')}>
            Try the sample shop
          </button>
        ) : (
          <>
            <button type="button" className="act" onClick={onAfresh}>
              Start the sample shop afresh
            </button>
            <button type="button" className="act" onClick={() => goTo('own')}>
              Leave the sample shop
            </button>
          </>
        )}
      </div>
    </header>
  );
}
