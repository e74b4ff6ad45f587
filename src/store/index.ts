export { backupOf, bringIn, putInstead, replaceBy, wipe, type BroughtIn } from './backup';
export type { ShopCore } from './database';
export { storeProblem } from './fault';
export { newId } from './newId';
export { askToPersist, isPersisted, type Persistence } from './persistence';
export { keepScanAside, readScanAside } from './scanAside';
export { createSaver, type Saving } from './saver';
export { emptyCore, openStore, type ShopView, type Store } from './store';
