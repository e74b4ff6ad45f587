/** What a browser keeps back from a page on plain http, in words, by what it looks for. */
export function keptBack(here: {
  wakeLock: boolean;
  serviceWorker: boolean;
  persist: boolean;
  sharedMemory: boolean;
}): string[] {
  return [
    ...(here.wakeLock ? [] : ['keeping the screen on while a clock runs']),
    ...(here.serviceWorker ? [] : ['starting without network']),
    ...(here.persist ? [] : ['a promise to keep what is stored']),
    ...(here.sharedMemory ? [] : ['memory shared between threads (molds take longer)']),
  ];
}
