import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { runnerImport, type Plugin } from 'vite';

/**
 * What the page may do: load what lies beside it, and nothing else. A printed sheet opens in a window that inherits this and carries its style
 * in itself, so these few texts are allowed by their hash, read from the sheets as they stand.
 */
export async function readPolicy(root: string): Promise<string> {
  const file = join(root, 'src/sheet/styles.ts');
  const { module } = await runnerImport<{ SHEET_STYLES: readonly string[] }>(file);
  return [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' ${module.SHEET_STYLES.map(shaOf).join(' ')}`,
    "img-src 'self' blob: data:",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "font-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

/** Puts the policy into the built page. The dev server puts scripts and styles into the page itself, so it goes without. */
export const contentPolicy = (policy: string): Plugin => ({
  name: 'content-policy',
  apply: 'build',
  transformIndexHtml: (html) => {
    const after = '<meta charset="utf-8" />';
    if (!html.includes(after)) throw new Error(`contentPolicy: expected ${after} in the page, got none`);
    return html.replace(
      after,
      `${after}\n    <meta http-equiv="Content-Security-Policy" content="${policy}" />`,
    );
  },
});

const shaOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
