import type { ShopStore } from '../../store';

/** Remembers for the shop the unit that was chosen beside a box: the next one begins with it. */
export function rememberUnit(store: ShopStore, field: string, unit: string): void {
  store
    .changeCore(({ settings, ...core }) => ({
      ...core,
      settings: { ...settings, units: { ...settings?.units, [field]: unit } },
    }))
    // The box has it; that a later one begins with it is a convenience.
    .catch(() => undefined);
}
