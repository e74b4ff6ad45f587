const USUAL = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/**
 * The browser to test with: CHROMIUM_PATH, else the first of the usual places. A wrong CHROMIUM_PATH throws; so does having
 * no browser where E2E_REQUIRED=1, so that no run can turn green by skipping everything.
 */
export function chromiumPath(env, exists) {
  const given = env.CHROMIUM_PATH;
  if (given !== undefined && given !== '') {
    if (!exists(given)) throw new Error(`chromiumPath: expected a browser at CHROMIUM_PATH, got ${given}`);
    return given;
  }
  const found = USUAL.find(exists);
  if (found === undefined && env.E2E_REQUIRED === '1') {
    throw new Error('chromiumPath: expected a browser because E2E_REQUIRED=1, got none. Set CHROMIUM_PATH.');
  }
  return found;
}
