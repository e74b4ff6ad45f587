/// <reference types="vite/client" />

/** From package.json, put in by vite.config.ts. */
declare const __APP_VERSION__: string;
