/** Lint as a wall: no chance and no clock in rooms, no bare numbers where a keeper could dispute them. */
import tseslint from 'typescript-eslint';

const rooms = 'src/{numbers,figures,journal,weather,hive,colony,queens,advice,words,sheets,apiary}/**/*.ts';
const tests = ['**/*.test.ts', '**/*.contract.ts', '**/for-tests.ts'];

const noWorld = {
  'no-restricted-globals': [
    'error',
    { name: 'Date', message: 'Rooms have no clock: take the day as an argument (numbers/day.ts).' },
    { name: 'fetch', message: 'Rooms have no network.' },
    { name: 'console', message: 'Rooms do not print: return the issue, words makes the sentence.' },
    { name: 'process', message: 'Rooms know no process.' },
    { name: 'window', message: 'Rooms know no screen.' },
    { name: 'document', message: 'Rooms know no screen.' },
  ],
  'no-restricted-properties': [
    'error',
    {
      object: 'Math',
      property: 'random',
      message: 'Chance is an argument (numbers/random.ts), so that a seed reproduces it.',
    },
  ],
};

export default tseslint.config(
  { ignores: ['build/**', 'node_modules/**', 'yard-data/**'] },
  ...tseslint.configs.recommended.map((config) => ({ ...config, files: ['**/*.ts', '**/*.tsx'] })),
  {
    files: ['**/*.ts', '**/*.tsx'],
    rules: {
      'no-restricted-properties': noWorld['no-restricted-properties'],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/no-explicit-any': 'error',
      'no-restricted-exports': ['error', { restrictDefaultExports: { direct: true, named: true } }],
      'max-lines-per-function': ['error', { max: 70, skipBlankLines: true, skipComments: true }],
      eqeqeq: 'error',
      'prefer-const': 'error',
      'no-console': 'off',
    },
  },
  { files: [rooms, 'src/apiary.ts'], ignores: tests, rules: { ...noWorld, 'no-console': 'error' } },
  {
    files: ['src/{colony,advice,queens}/**/*.ts'],
    // Limits in schemas are limits of the format, not figures of the trade.
    ignores: [...tests, 'src/colony/kind-*.ts', 'src/colony/reading.ts', 'src/colony/visit.ts'],
    rules: {
      '@typescript-eslint/no-magic-numbers': [
        'error',
        {
          ignore: [-1, 0, 1, 2],
          ignoreTypeIndexes: true,
          ignoreNumericLiteralTypes: true,
          ignoreReadonlyClassProperties: true,
        },
      ],
    },
  },
  { files: ['**/*.test.ts', '**/*.contract.ts', '**/*.tsx'], rules: { 'max-lines-per-function': 'off' } },
  { files: ['vite.config.ts'], rules: { 'no-restricted-exports': 'off' } },
);
