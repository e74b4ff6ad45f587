import js from '@eslint/js';
import reactHooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';

/** Globals that only a page, a worker or Node has. */
const BROWSERS_AND_NODES = [
  ...[
    'window',
    'document',
    'navigator',
    'location',
    'history',
    'localStorage',
    'sessionStorage',
    'indexedDB',
  ],
  ...[
    'self',
    'postMessage',
    'Worker',
    'fetch',
    'alert',
    'process',
    'Buffer',
    'require',
    '__dirname',
    'global',
  ],
];

export default tseslint.config(
  { ignores: ['dist', 'node_modules', 'test-results'] },
  js.configs.recommended,
  {
    files: ['**/*.ts', '**/*.tsx'],
    extends: [...tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      // A checked index or a just-made entry: the reader sees it, noUncheckedIndexedAccess can not.
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', ignoreRestSiblings: true }],
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      'max-lines': ['error', { max: 300, skipBlankLines: false, skipComments: false }],
      eqeqeq: 'error',
    },
  },
  {
    // What reckons and what words it runs anywhere: who may import whom is in .dependency-cruiser.cjs, this is the rest.
    files: ['src/{units,geometry,yield,checks,plan,job,words,sheet}/**/*.ts'],
    rules: { 'no-restricted-globals': ['error', ...BROWSERS_AND_NODES] },
  },
  {
    files: ['src/app/**/*.tsx', 'src/app/**/*.ts', 'src/viewer/**/*.tsx'],
    ...reactHooks.configs.flat.recommended,
  },
  {
    files: ['**/*.mjs', '*.js', '*.cjs'],
    languageOptions: {
      globals: {
        console: 'readonly',
        process: 'readonly',
        URL: 'readonly',
        performance: 'readonly',
        Buffer: 'readonly',
      },
    },
  },
);
