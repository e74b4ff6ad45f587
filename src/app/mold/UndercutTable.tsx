import { formatVolume } from '../../units';
import type { Mold } from '../../plan';
import { amount } from '../../words/sentence';
import { Disclosure } from '../parts/Disclosure';
import { FigureTable } from '../parts/FigureTable';
import { pullTo } from '../words/holdRows';
import { sidesWords } from '../words/moldFigures';

type Undercut = NonNullable<Mold['shape']['undercut']>;

/** Where the jacket would lock, the largest places first, and what other pulls would lock. */
export function UndercutTable({ undercut }: { undercut: Undercut }) {
  const { places, compared, fillMm3 } = undercut;
  return (
    <>
      {places.length > 0 && (
        <FigureTable
          head={['Undercut', 'Filled']}
          caption={`Of ${cm3(fillMm3)} in all that lock behind the skin; filled, so that the jacket draws.`}
          rows={places.map(({ atMm, volumeMm3, sizeMm }, i) => ({
            name: `${i + 1}. at ${atMm.map((mm) => Math.round(mm)).join(', ')} mm (x, y, z)`,
            value: cm3(volumeMm3),
            where: `about ${sidesWords(sizeMm)}`,
          }))}
        />
      )}
      <div className="more">
        <Disclosure title="What other pulls would lock">
          <FigureTable
            head={['Pull', 'Filled']}
            caption="The same skin, with the jacket pulled along the axes of the scan."
            rows={compared.map(({ pull, pieces, fillMm3: otherMm3 }) => ({
              name: `${pieces === 2 ? 'Two pieces' : 'One piece'}, ${pullTo({ pull, pieces })}`,
              value: cm3(otherMm3),
            }))}
          />
        </Disclosure>
      </div>
    </>
  );
}

/** What lies below a hundredth of a cubic centimeter is nothing. */
const cm3 = (mm3: number): string =>
  mm3 < 10 ? 'nothing' : mm3 < 1000 ? `${amount(mm3 / 1000, 2)} cm³` : formatVolume(mm3 / 1000);
