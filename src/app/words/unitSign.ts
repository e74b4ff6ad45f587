/** A unit as it is shown in a menu; what it is typed as where the two are the same. */
export const unitSign = (unit: string): string => SIGNS[unit] ?? unit;

const SIGNS: Readonly<Record<string, string>> = {
  'kg/m3': 'kg/m³',
  'lb/ft3': 'lb/ft³',
  cm3: 'cm³',
  'g/cm3': 'g/cm³',
  C: '°C',
  F: '°F',
};
