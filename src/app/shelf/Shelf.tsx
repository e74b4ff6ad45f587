import { useEffect } from 'react';
import { MarkShape } from '../parts/StatusMark';
import { useFileDrop } from '../parts/useFileDrop';
import { useFocusKept } from '../parts/useFocusKept';
import { useShop } from '../shop/shopContext';
import { StoreProblem } from '../shop/StoreProblem';
import type { KeptSource } from '../ticket/keptSource';
import { sourceOfFile } from '../ticket/sampleScans';
import type { Nav } from '../useRoute';
import { Cards } from './Cards';
import { Pieces } from './Pieces';
import { RestorePanel } from './RestorePanel';
import { Safety } from './Safety';
import { Settings } from './Settings';
import { ShelfHead } from './ShelfHead';
import { Stock } from './Stock';
import { UndoBars } from './UndoBars';
import { useNewPiece, type NewPiece } from './useNewPiece';
import { useRestore } from './useRestore';
import { useSample } from './useSample';
import { useUndos } from './useUndos';
import { WorkOut } from './WorkOut';

/** What have we got? */
export function Shelf({ nav }: { nav: Nav }) {
  const { view, choice } = useShop();
  const begun = useNewPiece(nav);
  const restore = useRestore();
  const sample = useSample();
  const undos = useUndos();
  useFocusKept();
  useFileDrop((source) => {
    if (isBackupName(source.name)) void asFile(source).then(restore.look);
    else begun.beginWith(source);
  });
  useEffect(() => {
    document.title = 'Shelf · Risewright';
  }, []);
  const isEmpty = view?.pieces.length === 0;
  return (
    <div className="page wide">
      <main className="ticket" id="main" tabIndex={-1}>
        <ShelfHead
          nav={nav}
          isEmpty={isEmpty && choice === 'own'}
          onNew={begun.begin}
          onScan={(file) => begun.beginWith(sourceOfFile(file))}
          onBackup={restore.look}
          onAfresh={sample.afresh}
        />
        <News begun={begun} isFilling={sample.isFilling} />
        <StoreProblem problem={begun.problem ?? sample.problem} />
        <RestorePanel {...restore} />
        <UndoBars {...undos} />
        {view !== undefined && (
          <>
            {isEmpty ? !sample.isFilling && <FirstPiece /> : <Pieces {...{ view, nav, undos }} />}
            <WorkOut pieces={view.pieces} isAtOnce={choice === 'sample'} />
            <Stock core={view.core} pieces={view.pieces} undos={undos} />
            <Cards core={view.core} undos={undos} />
            <Settings core={view.core} />
            <Safety onBackup={restore.look} />
          </>
        )}
      </main>
    </div>
  );
}

/** What is being done, and a file that could not be taken. */
function News({ begun, isFilling }: { begun: NewPiece; isFilling: boolean }) {
  return (
    <div role="status">
      {begun.note !== undefined && <p className="told">{begun.note}</p>}
      {isFilling && <p className="told">The sample shop is being set up …</p>}
      {begun.refused !== undefined && (
        <div className="complaint">
          <MarkShape mark="look" />
          <p>{begun.refused}</p>
        </div>
      )}
    </div>
  );
}

const FirstPiece = () => (
  <div className="first">
    <p className="why">
      Nothing on the Shelf yet. A piece begins with a scan of the sculpt: drop the file anywhere on this page.
      Then it is measured, a mold is chosen, and Batch says how many grams of A and of B go into the cup. All
      of it is kept here as you type.
    </p>
    <p className="why">
      The sample shop has four invented pieces with molds, castings and stock, to see how it goes. It is kept
      apart from yours.
    </p>
  </div>
);

const isBackupName = (name: string): boolean => name.toLowerCase().endsWith('.json');

const asFile = async (source: KeptSource): Promise<File> => new File([await source.bytes()], source.name);
