import { useUpdate } from './useUpdate';
import { versionText } from './version';

/** For the foot of the page: which version runs, and whether it starts without network. */
export function VersionLine() {
  const { version, isKept } = useUpdate();
  return (
    <p>
      Risewright {versionText(version)}
      {isKept && '. Kept on this device: it starts without network'}
    </p>
  );
}
