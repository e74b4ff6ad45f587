import { useShop } from './shopContext';
import { StoreProblem } from './StoreProblem';

/** That nothing can be kept here, over every screen. */
export function StoreTrouble() {
  const { problem } = useShop();
  return problem === undefined ? null : (
    <div className="trouble">
      <StoreProblem problem={problem} />
    </div>
  );
}
