import js from '@eslint/js';
import { defineConfig } from 'eslint/config';
import tseslint from 'typescript-eslint';

/** Files that belong to a TypeScript project, so that rules may ask for types. */
const typed = [
  'packages/*/src/**/*.{ts,tsx}',
  'packages/*/types/**/*.ts',
  'notebooks/**/*.ts',
  'tests/**/*.ts',
];

/** Functions of Math that need not be the same on two engines, and what is there in their place. */
const elementary = [
  ...['acosh', 'asinh', 'atan', 'atan2', 'atanh', 'cbrt', 'cosh', 'log1p', 'log2', 'sinh', 'tan', 'tanh'],
  ...['acos', 'asin', 'cos', 'exp', 'expm1', 'hypot', 'log', 'log10', 'pow', 'sin'],
].map((property) => ({
  object: 'Math',
  property,
  message:
    'Engines differ in its last digit: take it from base/elementary or base/trigonometry, or add it there.',
}));

export default defineConfig(
  { ignores: ['**/dist/', 'dist-notebooks/', '.reports/', '.api/', '.page/', 'coverage/'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  js.configs.recommended,
  {
    files: ['**/*.{ts,tsx}'],
    extends: [tseslint.configs.strict],
  },
  {
    files: typed,
    extends: [tseslint.configs.strictTypeCheckedOnly],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      // To leave a key out of an object.
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/explicit-module-boundary-types': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true, requireDefaultForNonUnion: false },
      ],
      // An index access is typed as present, so a guard against a missing entry looks needless to this rule.
      '@typescript-eslint/no-unnecessary-condition': 'off',
    },
  },
  {
    files: ['packages/**', 'notebooks/**', 'tests/**'],
    ignores: ['**/*.generated.ts'],
    rules: {
      'max-lines': ['error', { max: 400 }],
      eqeqeq: 'error',
      'no-implicit-coercion': 'error',
      'prefer-const': 'error',
    },
  },
  {
    // A function is read on one screen and a half; tables are constants, not functions.
    files: ['packages/**', 'notebooks/**'],
    rules: { 'max-lines-per-function': ['error', { max: 80, skipBlankLines: true, skipComments: true }] },
  },
  {
    // A lesson is one closure over its first run, as a page of a notebook is: its parts are functions, and short.
    files: ['notebooks/lessons/*.ts'],
    rules: { 'max-lines-per-function': 'off' },
  },
  {
    // The library says nothing, reads no clock and draws only from a seed it is given.
    files: ['packages/core/src/**/*.ts'],
    rules: {
      'no-console': 'error',
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'Draw from a seeded generator.' },
        { object: 'Date', property: 'now', message: 'The library reads no clock.' },
        ...elementary,
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'BinaryExpression[operator="**"]:not([left.value=2][right.type="Literal"])',
          message: 'Engines differ in powers: take pow, pow10, powerOfTwo or wholePower of base/elementary.',
        },
        {
          selector: 'CallExpression[callee.property.name=/^(localeCompare|toLocale.*)$/]',
          message: 'Engines differ in what they know of languages: compare code units.',
        },
        {
          selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
          message: 'The library reads no clock.',
        },
      ],
    },
  },
  {
    // Words, pictures and documents are the same on every engine too.
    files: ['packages/view/src/**/*.ts', 'packages/cli/src/**/*.ts'],
    rules: { 'no-restricted-properties': ['error', ...elementary] },
  },
  {
    files: ['**/*.{js,mjs,cjs}', '.tools/**'],
    languageOptions: {
      globals: { process: 'readonly', console: 'readonly', URL: 'readonly', module: 'writable' },
    },
  },
);
