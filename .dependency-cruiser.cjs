// Who may import whom. Each rule was seen to fail on a file that broke it.

/**
 * The floors of the library, lowest first. A room imports from itself and from floors below it, never from its
 * neighbours on the same floor nor from above.
 */
const coreFloors = [
  ['base'],
  ['library', 'solve', 'jobs'],
  ['chemistry', 'weather'],
  ['processes', 'scenario'],
  ['model', 'log'],
  ['run'],
  ['result'],
  ['analysis'],
  ['calibration'],
  ['tasks'],
];

/** The floors of the command line, lowest first. */
const cliFloors = [
  ['files'],
  ['terminal'],
  ['workers', 'help'],
  ['commands/shared'],
  ['commands/(?!shared)'],
];

/** The floors of words and pictures, lowest first. */
const viewFloors = [['text'], ['pictures', 'documents'], ['report']];

const core = '^packages/core/src';
const view = '^packages/view/src';
const cli = '^packages/cli/src';

/** One rule for each room of a package: nothing of its own floor and nothing of a floor above. */
const floorRules = (name, base, floors) =>
  floors
    .flatMap((rooms, floor) =>
      rooms.map((room) => ({
        name: `${name}-floors-${room.replace(/\W+/g, '-')}`,
        comment: `${room} knows only what lies below it: see the floors at the top of this file.`,
        severity: 'error',
        from: { path: `${base}/${room}` },
        to: {
          path: floors
            .slice(floor)
            .flatMap((beside) => beside.filter((other) => other !== room).map((other) => `${base}/${other}`)),
        },
      })),
    )
    .filter(({ to }) => to.path.length > 0);

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
      // `virtual:leat` is made by the build of the page, and `?inline` is its word for a style as text.
      to: { couldNotResolve: true, pathNot: '^virtual:leat$|\\.css\\?inline$' },
    },
    ...floorRules('core', core, coreFloors),
    ...floorRules('view', view, viewFloors),
    ...floorRules('cli', cli, cliFloors),
    {
      name: 'written-as-output',
      comment: 'A file is written only where it was decided that nothing is lost by it.',
      severity: 'error',
      from: { path: '^packages/cli/src/', pathNot: '^packages/cli/src/files/outputs' },
      to: { path: '^packages/cli/src/files/write' },
    },
    {
      name: 'core-no-node',
      comment: 'The library runs in a browser: no Node built-in.',
      severity: 'error',
      from: { path: core },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'core-no-readers',
      comment: 'The library does not know its readers.',
      severity: 'error',
      from: { path: '^packages/core/' },
      to: { path: ['^packages/(view|cli)/', '(^|/)@leat/(view|cli)($|/)'] },
    },
    {
      name: 'page-alone',
      comment: 'The page does what the command does, by the same library, and knows nothing of it.',
      severity: 'error',
      from: { path: '^packages/page/src/' },
      to: { path: ['^packages/cli/', '(^|/)@leat/cli($|/)'] },
    },
    {
      name: 'page-no-node',
      comment: 'The page runs in a browser: no Node built-in.',
      severity: 'error',
      from: { path: '^packages/page/src/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'nobody-knows-the-page',
      comment: 'The page is built of the library, words and pictures; nothing is built of the page.',
      severity: 'error',
      from: { path: '^(packages|notebooks)/', pathNot: '^packages/page/' },
      to: { path: ['^packages/page/', '(^|/)@leat/page($|/)'] },
    },
    {
      name: 'view-no-cli',
      comment: 'Words and pictures do not know the command that prints them.',
      severity: 'error',
      from: { path: '^packages/view/' },
      to: { path: ['^packages/cli/', '(^|/)@leat/cli($|/)'] },
    },
    {
      name: 'view-no-node',
      comment:
        'Words and pictures are made in a browser too: no Node built-in, and the document is handed in.',
      severity: 'error',
      from: { path: view },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'view-text-alone',
      comment: 'Words are loaded by every command: they draw nothing and need no package but the library.',
      severity: 'error',
      from: { path: `${view}/text/` },
      to: { path: '/node_modules/' },
    },
    {
      name: 'by-name',
      comment: 'The command, and words and pictures, use the public face of what they are built on only.',
      severity: 'error',
      from: { path: '^packages/(view|cli|page|examples)/' },
      to: {
        path: '^packages/core/',
        pathNot: '^packages/core/dist/(index|module|odex|units|analysis|calibration|tasks|workers)\\.',
      },
    },
    {
      name: 'view-by-name',
      comment: 'The command and the lessons use the public face of words and pictures only.',
      severity: 'error',
      from: { path: '^(packages/(cli|page|examples)|notebooks)/' },
      to: {
        path: '^packages/view/',
        pathNot: '^packages/view/dist/(text|pictures|documents|report|questions|lesson)/index',
      },
    },
    {
      name: 'process-alone',
      comment:
        'A file of processes imports no other: index.ts gathers them; kernels/, components.ts and process.ts hold what is shared.',
      severity: 'error',
      from: { path: `${core}/processes/`, pathNot: `${core}/processes/index\\.ts$` },
      to: { path: `${core}/processes/`, pathNot: `${core}/processes/(kernels/|(components|process)\\.ts$)` },
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
      name: 'file-knows-no-domain',
      comment: 'Reading YAML, includes and settings knows nothing of fish: sections/ does.',
      severity: 'error',
      from: { path: `${core}/scenario/file/` },
      to: { path: `${core}/`, pathNot: `${core}/(scenario/file|base)/` },
    },
    {
      name: 'checks-without-schemas',
      comment:
        'What a system may be is known without a file: no schema, no reader, so that a scenario built in code needs neither.',
      severity: 'error',
      from: { path: `${core}/scenario/(checks/|check-scenario)` },
      to: { path: [`${core}/scenario/sections/`, `${core}/scenario/read-scenario`, '/node_modules/'] },
    },
    {
      name: 'notebooks-by-name',
      comment: 'What the lessons share uses the public face of the library and no command.',
      severity: 'error',
      from: { path: '^notebooks/' },
      to: {
        path: '^(packages|tests)/',
        pathNot: [
          '^packages/(core/dist|view/dist/(text|pictures|documents|report|questions|lesson))/(index|analysis|units)\\.',
          '^packages/core/dist/(index|analysis|units)\\.',
          '^tests/published/VALIDATION\\.md$',
        ],
      },
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
