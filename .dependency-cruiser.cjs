// Who may import whom. Each rule was seen to fail on a file that broke it.
const core = '^packages/core/src';

module.exports = {
  forbidden: [
    {
      name: 'no-circular',
      comment: 'A circle of imports has no first file to read.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'not-found',
      comment: 'An import that leads nowhere.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: 'core-no-node',
      comment: 'The library runs in a browser: no Node built-in.',
      severity: 'error',
      from: { path: core },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'core-no-cli',
      comment: 'The library does not know its readers.',
      severity: 'error',
      from: { path: '^packages/core/' },
      to: { path: ['^packages/cli/', '(^|/)@leat/cli($|/)'] },
    },
    {
      name: 'cli-by-name',
      comment: 'The command uses the public face of the library only.',
      severity: 'error',
      from: { path: '^packages/cli/' },
      to: { path: '^packages/core/', pathNot: '^packages/core/dist/index' },
    },
    {
      name: 'process-alone',
      comment:
        'A process imports no other process: index.ts gathers them, kinetics/ and limits.ts hold what is shared.',
      severity: 'error',
      from: { path: `${core}/processes/`, pathNot: `${core}/processes/index\\.ts$` },
      to: { path: `${core}/processes/`, pathNot: `${core}/processes/(kinetics/|(limits|process)\\.ts$)` },
    },
    {
      name: 'solve-alone',
      comment: 'The solver knows nothing of what is modelled.',
      severity: 'error',
      from: { path: `${core}/solve/` },
      to: { path: '^packages/', pathNot: [`${core}/solve/`, '^packages/core/types/odex', '/node_modules/'] },
    },
    {
      name: 'solve-packages',
      comment: 'The solver uses odex, no other package.',
      severity: 'error',
      from: { path: `${core}/solve/` },
      to: { path: '(^|/)node_modules/', pathNot: '/node_modules/odex/' },
    },
    {
      name: 'library-below',
      comment: 'The library of published values does not know the model that reads it.',
      severity: 'error',
      from: { path: `${core}/library/` },
      to: { path: `${core}/(model|processes|solve|run)/` },
    },
    {
      name: 'scenario-below',
      comment: 'What a person wrote does not depend on how it is computed.',
      severity: 'error',
      from: { path: `${core}/scenario/` },
      to: { path: `${core}/(solve|run|model)/` },
    },
    {
      name: 'notebooks-by-name',
      comment: 'What the lessons share uses the public face of the library and no command.',
      severity: 'error',
      from: { path: '^notebooks/' },
      to: { path: '^(packages|tests)/', pathNot: '^packages/core/dist/index' },
    },
    {
      name: 'packages-no-tests',
      comment: 'What is shipped does not import its tests.',
      severity: 'error',
      from: { path: '^packages/' },
      to: { path: '^(tests|notebooks)/' },
    },
  ],
  options: {
    doNotFollow: { path: ['node_modules', '/dist/'] },
    exclude: { path: '^packages/[^/]+/dist/.*\\.map$' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['types', 'import', 'node', 'default'],
      mainFields: ['types', 'module', 'main'],
    },
  },
};
