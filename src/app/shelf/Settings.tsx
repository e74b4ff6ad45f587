import { useState } from 'react';
import type { ShopSettings } from '../../job/settings';
import type { ShopCore } from '../../store';
import { Choices } from '../parts/Choices';
import { useShop } from '../shop/shopContext';
import { StoreProblem } from '../shop/StoreProblem';
import { useTrying } from '../shop/useTrying';
import { POUR_FIELDS } from '../ticket/pourFields';
import type { BoxText } from '../ticket/readSpec';
import { typedText } from '../ticket/typedText';
import { KeptBox } from './KeptBox';
import { KeptText } from './KeptText';

const STEP = { kind: 'mass', units: ['g', 'oz'] } as const;
const MOST = { kind: 'mass', units: ['kg', 'g', 'lb', 'oz'] } as const;

const AIR = {
  altitude: { label: 'Height above the sea', unitLabel: 'Unit of the height', spec: POUR_FIELDS.altitude },
  station: {
    label: 'Barometer on the bench, not set to sea level',
    unitLabel: 'Unit of the pressure',
    spec: POUR_FIELDS.station,
  },
} as const;

type Air = keyof typeof AIR;

/** What holds for every pour of this shop: new pieces begin with it. */
export function Settings({ core }: { core: ShopCore }) {
  const { store } = useShop();
  const { attempt, problem } = useTrying();
  const change = (how: (core: ShopCore) => ShopCore): void => attempt(() => store.changeCore(how));
  const { scale, settings } = core;
  return (
    <section className="shelf" aria-labelledby="settings">
      <h2 id="settings" tabIndex={-1}>
        How do we weigh, and how high up are we?
      </h2>
      <p className="why">
        A new piece begins with what stands here, and with the unit that was chosen last beside each box. What
        stands on a piece already stays as it is.
      </p>
      <div className="fields">
        <KeptText
          label="Name of the shop"
          text={core.name}
          onKeep={(name) => change((now) => ({ ...now, name }))}
        />
        <KeptBox
          label="The scale shows steps of"
          unitLabel="Unit of the step"
          spec={STEP}
          kept={typedText(STEP, scale?.stepG)}
          onKeep={(_, stepG) => change((now) => withStep(now, stepG))}
        />
        {scale !== undefined && (
          <KeptBox
            label="The most it takes"
            unitLabel="Unit of the most it takes"
            spec={MOST}
            kept={typedText(MOST, scale.maxG)}
            onKeep={(_, maxG) => change((now) => withMost(now, maxG))}
          />
        )}
        <AirFields settings={settings} change={change} />
      </div>
      <StoreProblem problem={problem} />
    </section>
  );
}

/** One of the two: with both, one would say what the other contradicts. */
function AirFields({
  settings,
  change,
}: {
  settings: ShopSettings | undefined;
  change: (how: (core: ShopCore) => ShopCore) => void;
}) {
  const [chosen, setChosen] = useState<Air>();
  const air = chosen ?? (settings?.station === undefined ? 'altitude' : 'station');
  const { label, unitLabel, spec } = AIR[air];
  return (
    <>
      <Choices
        legend="The air is told by"
        name="air-by"
        value={air}
        options={[
          { value: 'altitude', label: 'height above the sea' },
          { value: 'station', label: 'barometer' },
        ]}
        onChoose={setChosen}
      />
      <KeptBox
        key={air}
        label={label}
        unitLabel={unitLabel}
        spec={spec}
        kept={settings?.[air] ?? { text: '', unit: spec.units[0] }}
        onKeep={(box) => change((now) => withAir(now, air, box))}
      />
    </>
  );
}

/** Without a step there is no scale, and nothing that it takes at the most. */
function withStep({ scale, ...core }: ShopCore, stepG: number | undefined): ShopCore {
  return stepG === undefined ? core : { ...core, scale: { ...scale, stepG } };
}

function withMost(core: ShopCore, maxG: number | undefined): ShopCore {
  if (core.scale === undefined) return core;
  const { stepG } = core.scale;
  return { ...core, scale: maxG === undefined ? { stepG } : { stepG, maxG } };
}

function withAir(core: ShopCore, air: Air, box: BoxText | undefined): ShopCore {
  const { altitude: _altitude, station: _station, ...others } = core.settings ?? {};
  return {
    ...core,
    settings: box === undefined ? others : { ...others, [air]: { text: box.text, unit: box.unit } },
  };
}
