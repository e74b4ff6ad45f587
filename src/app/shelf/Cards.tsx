import { lazy, Suspense, useState, type MouseEvent } from 'react';
import type { ShopCore } from '../../store';
import { formatDensity } from '../../units';
import type { FoamCard, SiliconeCard } from '../../yield';
import { useShop } from '../shop/shopContext';
import { StoreProblem } from '../shop/StoreProblem';
import { useTrying } from '../shop/useTrying';
import { ratioWords, siliconeRatioWords } from '../words/ratioWords';
import type { Undos } from './useUndos';

const FoamCardForm = lazy(() => import('./FoamCardForm').then((m) => ({ default: m.FoamCardForm })));
const SiliconeCardForm = lazy(() =>
  import('./SiliconeCardForm').then((m) => ({ default: m.SiliconeCardForm })),
);

type Kind = 'foam' | 'silicone';

/** Which card is open: one of the shop by its name, or a new one. */
type Open = { kind: Kind; name: string | undefined } | undefined;

/** The user's own cards of foam and silicone. */
export function Cards({ core, undos }: { core: ShopCore; undos: Undos }) {
  const [open, setOpen] = useState<Open>();
  const { foams, silicones } = core;
  const close = (): void => setOpen(undefined);
  return (
    <section className="shelf" aria-labelledby="cards">
      <h2 id="cards" tabIndex={-1}>
        Which materials do we use?
      </h2>
      {foams.length + silicones.length === 0 && (
        <p className="why">
          No card yet. The first foam typed in Batch can be kept here, and the first silicone in Mold; every
          pour after that begins with a press.
        </p>
      )}
      <ul className="cards">
        {foams.map((card) => (
          <Row
            key={`foam ${card.name}`}
            kind="foam"
            card={card}
            about={foamWords(card)}
            {...{ open, setOpen, undos }}
          />
        ))}
        {silicones.map((card) => (
          <Row
            key={`silicone ${card.name}`}
            kind="silicone"
            card={card}
            about={siliconeWords(card)}
            {...{ open, setOpen, undos }}
          />
        ))}
      </ul>
      <div className="chg">
        <button type="button" className="act" onClick={() => setOpen({ kind: 'foam', name: undefined })}>
          New foam card
        </button>
        <button type="button" className="act" onClick={() => setOpen({ kind: 'silicone', name: undefined })}>
          New silicone card
        </button>
      </div>
      {open !== undefined && open.name === undefined && (
        <Form kind={open.kind} name={undefined} onDone={close} />
      )}
    </section>
  );
}

const foamWords = (card: FoamCard): string =>
  `Free rise ${formatDensity(card.freeRiseKgM3)}. ${ratioWords(card)}`;

const siliconeWords = (card: SiliconeCard): string =>
  `${formatDensity(card.densityKgM3)}. ${siliconeRatioWords(card)}`;

interface RowProps {
  kind: Kind;
  card: FoamCard | SiliconeCard;
  about: string;
  open: Open;
  setOpen: (open: Open) => void;
  undos: Undos;
}

function Row({ kind, card, about, open, setOpen, undos }: RowProps) {
  const { store } = useShop();
  const { attempt, problem } = useTrying();
  const { name } = card;
  const isOpen = open?.kind === kind && open.name === name;
  const list = kind === 'foam' ? 'foams' : 'silicones';
  const remove = (event: MouseEvent): void =>
    attempt(async () => {
      let at = 0;
      await store.changeCore((core) => {
        at = core[list].findIndex((one) => one.name === name);
        return { ...core, [list]: core[list].filter((one) => one.name !== name) };
      });
      undos.add(event, `The card of ${name} is deleted.`, () =>
        store.changeCore((core) => ({
          ...core,
          [list]: core[list].some((one) => one.name === name)
            ? core[list]
            : (core[list] as (typeof card)[]).toSpliced(at, 0, card),
        })),
      );
    });
  return (
    <li>
      <h3>{name}</h3>
      <p className="note">{about}</p>
      <div className="chg">
        <button
          type="button"
          className="act"
          aria-expanded={isOpen}
          onClick={() => setOpen(isOpen ? undefined : { kind, name })}
        >
          Change<span className="sr"> the card of {name}</span>
        </button>
        <button type="button" className="act" onClick={remove}>
          Delete<span className="sr"> the card of {name}</span>
        </button>
      </div>
      <StoreProblem problem={problem} />
      {isOpen && <Form kind={kind} name={name} onDone={() => setOpen(undefined)} />}
    </li>
  );
}

const Form = ({ kind, name, onDone }: { kind: Kind; name: string | undefined; onDone: () => void }) => (
  <Suspense fallback={<p className="note">Loading …</p>}>
    {kind === 'foam' ? (
      <FoamCardForm key={name} name={name} onDone={onDone} />
    ) : (
      <SiliconeCardForm key={name} name={name} onDone={onDone} />
    )}
  </Suspense>
);
