import type { MassBalance } from '../../yield';
import { StatusMark } from '../parts/StatusMark';
import { balanceWords } from '../words/weighBalanceWords';

/** What was found of what was mixed, as the weights come in. Spoken when it changes. */
export function Balance({ balance, stepG }: { balance: MassBalance | undefined; stepG: number }) {
  const words = balance === undefined ? undefined : balanceWords(balance, stepG);
  return (
    <div className="balance" role="status">
      {balance === undefined || words === undefined ? (
        <p className="note quiet">
          Mixed, cup, trim and casting are compared here once three of them are in.
        </p>
      ) : (
        <>
          <StatusMark mark={balance.status} />
          <p>{words.sum}</p>
          <p className="note quiet">{words.range}</p>
        </>
      )}
    </div>
  );
}
