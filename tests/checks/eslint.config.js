import js from '@eslint/js';
import hooks from 'eslint-plugin-react-hooks';
import { defineConfig, globalIgnores } from 'eslint/config';
import globals from 'globals';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import tseslint from 'typescript-eslint';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

/** The core takes time, randomness and the outside world as arguments, so these names are not for it. */
const impure = ['fetch', 'indexedDB', 'localStorage', 'process', 'console'];

export default defineConfig(
  globalIgnores(['dist', 'coverage', 'test-results', '**/node_modules', '.pairlog']),
  js.configs.recommended,
  {
    files: ['**/*.{ts,tsx}'],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: {
      parserOptions: {
        project: [
          './core/tsconfig.json',
          './app/tsconfig.json',
          './app/hub/tsconfig.json',
          './app/terminal/tsconfig.json',
          './service-worker/tsconfig.json',
          './tests/tsconfig.json',
        ],
        tsconfigRootDir: root,
      },
    },
    rules: {
      '@typescript-eslint/no-unused-vars': [
        'error',
        { varsIgnorePattern: '^_', argsIgnorePattern: '^_' },
      ],
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      // Factories return plain functions here; nothing depends on `this`.
      '@typescript-eslint/unbound-method': 'off',
      'no-console': 'off',
      eqeqeq: ['error', 'always'],
    },
  },
  {
    files: ['core/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', ...impure],
      'no-restricted-syntax': [
        'error',
        {
          selector: "NewExpression[callee.name='Date'][arguments.length=0]",
          message: 'core takes its clock as an argument',
        },
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'core takes its randomness as an argument' },
        { object: 'Date', property: 'now', message: 'core takes its clock as an argument' },
      ],
    },
  },
  {
    files: ['app/**/*.tsx', 'app/parts/**/*.ts', 'app/desk/**/*.ts'],
    plugins: { 'react-hooks': hooks },
    rules: { 'react-hooks/rules-of-hooks': 'error', 'react-hooks/exhaustive-deps': 'error' },
  },
  { files: ['**/*.{js,mjs,cjs}'], languageOptions: { globals: globals.node } },
);
