import { keptBack } from './plainHttp';

/** For the foot of the page: what is missing at an address that is plain http. Nothing at any other. */
export function PlainHttp() {
  if (isSecureContext) return null;
  const missing = keptBack({
    wakeLock: 'wakeLock' in navigator,
    serviceWorker: 'serviceWorker' in navigator,
    persist: 'storage' in navigator && 'persist' in navigator.storage,
    sharedMemory: crossOriginIsolated,
  });
  if (missing.length === 0) return null;
  return (
    <p className="plain">
      This address is plain http, so the browser keeps back: {missing.join(', ')}. Everything else works here.
      Make a backup now and then.
    </p>
  );
}
