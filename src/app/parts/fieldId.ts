import type { FieldName } from '../ticket/fields';

/** Every field is on the page once, so that a link can lead to it. */
export const fieldId = (name: FieldName): string => `field-${name}`;
