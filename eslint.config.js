import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

const typed = ['**/*.ts', '**/*.svelte'];

export default ts.config(
  { ignores: ['dist/', 'node_modules/', 'test-results/', 'playwright-report/', 'coverage/', 'assets/'] },
  { ...js.configs.recommended, languageOptions: { globals: globals.node } },
  ...ts.configs.strictTypeChecked.map((config) => ({ ...config, files: typed })),
  ...ts.configs.stylisticTypeChecked.map((config) => ({ ...config, files: typed })),
  ...svelte.configs.recommended,
  {
    files: typed,
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname, extraFileExtensions: ['.svelte'] },
    },
    rules: {
      // Numbers in sentences need no String() around them; arrow functions may hand a void call on.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      // Shapes of documents and results are read side by side with the symbols of the standards.
      '@typescript-eslint/dot-notation': 'off',
      '@typescript-eslint/prefer-promise-reject-errors': ['error', { allowThrowingUnknown: true }],
      // A type parameter may tie a name to its entry of a table; ids and labels are taken apart letter by letter.
      '@typescript-eslint/no-unnecessary-type-parameters': 'off',
      '@typescript-eslint/no-misused-spread': 'off',
      'svelte/prefer-svelte-reactivity': 'off',
      'no-undef': 'off',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
  },
  {
    // In markup the linter cannot see the types of components' properties; svelte-check can, and checks them.
    files: ['**/*.svelte'],
    rules: {
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
      '@typescript-eslint/no-unnecessary-condition': 'off',
      'prefer-const': 'off',
      'svelte/prefer-const': ['error', { destructuring: 'all' }],
    },
  },
  { files: ['tests/e2e/**/*.ts'], rules: { 'no-empty-pattern': 'off' } },
);
