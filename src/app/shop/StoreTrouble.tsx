import { WITHOUT_STORE } from '../../words/storeWords';
import { useShop } from './shopContext';
import { StoreProblem } from './StoreProblem';

/** That nothing can be kept here, over every screen. */
export function StoreTrouble() {
  const { problem, goWithout } = useShop();
  return problem === undefined ? null : (
    <div className="trouble">
      <StoreProblem problem={problem} />
      {goWithout !== undefined && (
        <p className="chg">
          <button type="button" className="btn line" onClick={goWithout}>
            {WITHOUT_STORE}
          </button>
        </p>
      )}
    </div>
  );
}
