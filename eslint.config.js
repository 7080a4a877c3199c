import js from '@eslint/js'
import prettier from 'eslint-config-prettier'
import { defineConfig, globalIgnores } from 'eslint/config'
import tseslint from 'typescript-eslint'

const noDefaultExport = {
  selector: 'ExportDefaultDeclaration, ExportSpecifier[exported.name="default"]',
  message: 'A named export is found by its name wherever it is used.',
}

const shape = [
  noDefaultExport,
  { selector: 'TSEnumDeclaration', message: 'Write a union of texts: it is plain data and survives JSON.' },
  { selector: 'MethodDefinition[kind="set"], Property[kind="set"]', message: 'Data is not changed after it is made.' },
  {
    selector:
      'Program > VariableDeclaration[kind!="const"], Program > ExportNamedDeclaration > VariableDeclaration[kind!="const"]',
    message: 'No state outlives a call.',
  },
]

// Same bytes in, same bytes out: nothing outside src/node may ask the clock, chance, the locale or the machine.
const sameBytes = [
  { selector: 'NewExpression[callee.name="Date"][arguments.length=0]', message: 'Today comes in as `judgedOn`.' },
  { selector: 'CallExpression[callee.name="Date"]', message: 'Today comes in as `judgedOn`.' },
  {
    selector: 'MemberExpression[property.name=/^(localeCompare|toLocale.*)$/]',
    message: 'The locale would change the answer.',
  },
]

const machine = [
  'process',
  'console',
  'performance',
  'fetch',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'queueMicrotask',
  'Buffer',
  'Intl',
  'crypto',
]

const quietTests = {
  selector:
    'MemberExpression[object.name=/^(describe|it|test)$/][property.name=/^(skip|skipIf|runIf|only|todo|fails)$/]',
  message: 'Every test runs, and every test must pass.',
}

export default defineConfig(
  globalIgnores(['dist/', 'docs/api/', 'docs/reference/', 'coverage/', '.tmp/', '**/*.generated.*']),
  js.configs.recommended,
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/consistent-type-assertions': ['error', { assertionStyle: 'never' }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'separate-type-imports' }],
      '@typescript-eslint/no-empty-object-type': ['error', { allowInterfaces: 'with-single-extends' }],
      // Telling a problem and returning undefined is one step here: `return problems.add(...)`.
      '@typescript-eslint/no-confusing-void-expression': 'off',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        {
          allowDefaultCaseForExhaustiveSwitch: true,
          considerDefaultExhaustiveForUnions: false,
          requireDefaultForNonUnion: true,
        },
      ],
    },
  },
  {
    rules: {
      // Optional fields are spread by condition, which counts although nothing branches for the reader.
      complexity: ['error', { max: 18, variant: 'modified' }],
      eqeqeq: 'error',
      'max-depth': ['error', 2],
      'max-lines': ['error', 300],
      'max-params': ['error', 5],
      'no-eval': 'error',
      'no-new-func': 'error',
      'no-param-reassign': 'error',
      'no-restricted-syntax': ['error', ...shape],
      'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx'] }],
    },
  },
  {
    files: ['src/**/*.ts'],
    ignores: ['src/node/**'],
    rules: {
      'no-restricted-globals': ['error', { globals: machine, checkGlobalObject: true }],
      'no-restricted-properties': [
        'error',
        { object: 'Date', property: 'now' },
        { object: 'Math', property: 'random' },
      ],
      'no-restricted-syntax': ['error', ...shape, ...sameBytes],
    },
  },
  {
    // Tables are as long as what they list.
    files: ['src/model/kinds/**/*.ts', 'src/tables/**/*.ts'],
    rules: { 'max-lines': 'off' },
  },
  {
    // Where numbers are branded, and where untyped packages are wrapped.
    files: ['src/units/**/*.ts', 'src/engine/**/*.ts', 'src/network/**/*.ts', 'tests/**/*.ts'],
    rules: { '@typescript-eslint/consistent-type-assertions': ['error', { assertionStyle: 'as' }] },
  },
  {
    files: ['tests/**/*.ts'],
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      // Matchers, parsed JSON and generated values are untyped by nature.
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
      // A table of cases is as long as what it lists.
      'max-lines': ['error', 500],
      'no-restricted-syntax': ['error', ...shape, quietTests],
    },
  },
  {
    files: ['*.config.{js,ts}'],
    rules: { 'no-restricted-syntax': ['error', ...shape.filter((rule) => rule !== noDefaultExport)] },
  },
  {
    files: ['**/*.cjs'],
    languageOptions: { sourceType: 'commonjs', globals: { module: 'writable', require: 'readonly' } },
  },
  {
    files: ['docs/examples/**'],
    languageOptions: { globals: { console: 'readonly' } },
  },
  prettier,
)
