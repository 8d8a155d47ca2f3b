import tseslint from 'typescript-eslint'

/** Folders whose results must be the same on every machine and on every run. */
const deterministic = ['physics', 'colour', 'press', 'measure', 'lesson', 'drill'].map(
  (folder) => `src/${folder}/**/*.ts`,
)

const everywhere = [
  {
    selector: 'MemberExpression[property.name=/^(innerHTML|outerHTML|insertAdjacentHTML|srcdoc)$/]',
    message: 'Text becomes markup only through lit templates or DOM nodes, never through a string.',
  },
  {
    selector: 'TemplateElement[value.raw=/(inner|outer)HTML|srcdoc/]',
    message: 'Text becomes markup only through lit templates or DOM nodes, never through a string.',
  },
  {
    selector: 'ImportDeclaration[source.value=/unsafe-(html|svg|mathml|static)/]',
    message: 'Text becomes markup only through lit templates or DOM nodes, never through a string.',
  },
  {
    selector: 'TemplateElement[value.raw=/<[^>]*\\sstyle=/], ImportDeclaration[source.value=/style-map/]',
    message: 'The content policy refuses style attributes: use a class, or set a property of element.style.',
  },
  {
    selector: 'CatchClause > BlockStatement[body.length=0]',
    message: 'Say or do something about what was caught.',
  },
  {
    selector:
      ':matches(ImportDeclaration, ExportNamedDeclaration, ExportAllDeclaration)[source.value=/^\\.\\.?\\u002F(?!.*\\.[a-z0-9]+(\\?.*)?$)/]',
    message: 'A relative import names its file in full, with the extension.',
  },
]

const noClock = [
  {
    selector: 'NewExpression[callee.name="Date"][arguments.length=0], CallExpression[callee.name="Date"]',
    message: 'The clock is handed in; the model never reads it.',
  },
  {
    selector: 'MemberExpression[object.name="Date"][property.name="now"], MemberExpression[object.name="performance"]',
    message: 'The clock is handed in; the model never reads it.',
  },
  {
    selector: 'MemberExpression[object.name="Math"][property.name="random"], Identifier[name="crypto"]',
    message: 'All chance comes from the one seeded source, src/physics/random.ts.',
  },
]

export default tseslint.config(
  { ignores: ['dist', 'coverage', 'test-results', 'playwright-report'] },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      'no-empty': 'error',
      eqeqeq: 'error',
      'no-restricted-syntax': ['error', ...everywhere],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
    },
  },
  {
    files: ['src/**/*.ts'],
    ignores: ['src/command/**'],
    rules: {
      'no-console': 'error',
      'no-restricted-globals': ['error', 'process', 'Buffer', 'alert', 'confirm', 'prompt'],
    },
  },
  {
    files: deterministic,
    rules: {
      'no-restricted-syntax': ['error', ...everywhere, ...noClock],
      'no-restricted-globals': [
        'error',
        'process',
        'Buffer',
        'window',
        'document',
        'navigator',
        'localStorage',
        'fetch',
      ],
    },
  },
)
