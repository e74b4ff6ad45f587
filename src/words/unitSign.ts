/** A unit as it is printed, from how it is typed: `kg/m3` is kg/m³, `C` is °C. */
export const unitSign = (unit: string): string =>
  unit
    .replace(/^([CF])$/, '°$1')
    .replace(/(m|ft)([23])/g, (_, length: string, power: '2' | '3') => length + POWERS[power]);

const POWERS = { 2: '²', 3: '³' } as const;
