import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Plugin } from 'vite';

/** Without these two a page may not share memory between its threads; it then works with one. */
const ISOLATION = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
};

/** What the dev server and the server of `npm start` send with every file. */
export function hostHeaders(policy: string): Plugin {
  const preview = {
    'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
    'Referrer-Policy': 'no-referrer',
    'X-Content-Type-Options': 'nosniff',
  };
  const sending =
    (always: Record<string, string>) =>
    (request: IncomingMessage, response: ServerResponse, next: () => void): void => {
      // On plain http from elsewhere a browser takes no such word, and complains of it in its console.
      const all = { ...always, ...(isThisMachine(request.headers.host) ? ISOLATION : {}) };
      for (const [name, value] of Object.entries(all)) response.setHeader(name, value);
      next();
    };
  return {
    name: 'host-headers',
    configureServer: ({ middlewares }) => void middlewares.use(sending({})),
    configurePreviewServer: ({ middlewares }) => void middlewares.use(sending(preview)),
  };
}

const isThisMachine = (host = ''): boolean => /^(localhost|127\.\d+\.\d+\.\d+|\[::1\])(:\d+)?$/.test(host);
