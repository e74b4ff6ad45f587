import { Link } from '../parts/Link';
import type { Nav } from '../useRoute';
import { isSoundReady, unlockSound } from './sound';

interface BenchTopProps {
  nav: Nav;
  piece: string;
  code: string;
  /** Undefined where nothing sounds. */
  sound: { isOff: boolean; set: (isOff: boolean) => void } | undefined;
}

/** The one way out, the sound, and which casting it is. */
export function BenchTop({ nav, piece, code, sound }: BenchTopProps) {
  return (
    <div className="benchtop">
      <Link nav={nav} to={{ at: 'batch', piece }} className="back">
        Back to ticket
      </Link>
      {sound !== undefined && <SoundButton {...sound} />}
      <b>{code}</b>
    </div>
  );
}

/** After a reload a browser sounds only once it is touched: then that is what this button is for. */
function SoundButton({ isOff, set }: NonNullable<BenchTopProps['sound']>) {
  if (isOff || isSoundReady())
    return (
      <button type="button" className="act" onClick={() => set(!isOff)}>
        Sound: {isOff ? 'off' : 'on'}
      </button>
    );
  return (
    <button type="button" className="act" onClick={unlockSound}>
      Touch for sound
    </button>
  );
}
