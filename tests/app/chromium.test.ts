import { describe, expect, it } from 'vitest';
import { chromiumPath } from '../../scripts/chromium.mjs';

describe('which browser tests the page', () => {
  it('takes CHROMIUM_PATH before the usual places', () => {
    expect(chromiumPath({ CHROMIUM_PATH: '/opt/mine' }, () => true)).toBe('/opt/mine');
  });

  it('throws on a CHROMIUM_PATH that leads nowhere, even where another browser is', () => {
    const onlyUsual = (path: string): boolean => path === '/usr/bin/chromium';
    expect(() => chromiumPath({ CHROMIUM_PATH: '/opt/mine' }, onlyUsual)).toThrow('/opt/mine');
  });

  it('answers that there is none, or throws where one is required', () => {
    expect(chromiumPath({}, () => false)).toBeUndefined();
    expect(() => chromiumPath({ E2E_REQUIRED: '1' }, () => false)).toThrow('E2E_REQUIRED');
    expect(chromiumPath({ E2E_REQUIRED: '1' }, (path) => path === '/usr/bin/chromium')).toBe(
      '/usr/bin/chromium',
    );
  });
});
