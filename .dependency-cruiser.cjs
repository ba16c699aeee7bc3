/** The walls of the house: which room may import which, each with its reason. See ARCHITECTURE.md. */
const ROOMS_IN_ORDER = [
  'geometry',
  'units',
  'body',
  'construct',
  'piece',
  'block',
  'design',
  'check',
  'sketch',
  'cut',
  'lay',
  'sew',
  'bill',
  'sheet',
  'order',
];

/** A room may use the rooms before it, never the ones after it. */
const noLookingBack = ROOMS_IN_ORDER.map((room, index) => ({
  name: `${room}-knows-only-earlier-rooms`,
  comment: `engine/${room} may not know the rooms that come after it on the way from body to paper.`,
  severity: 'error',
  // A test beside the code may ask a later room to judge what the room has made.
  from: { path: `^src/engine/${room}/`, pathNot: '\\.test\\.ts$' },
  to: { path: `^src/engine/(${ROOMS_IN_ORDER.slice(index + 1).join('|') || 'none'})/` },
}));

const throughTheDoor = ROOMS_IN_ORDER.map((room) => ({
  name: `${room}-through-its-door`,
  comment: `Other rooms import engine/${room}/index.ts, so that its files can change freely.`,
  severity: 'error',
  from: { pathNot: `^src/engine/${room}/` },
  to: { path: `^src/engine/${room}/`, pathNot: `^src/engine/${room}/index\\.ts$` },
}));

module.exports = {
  forbidden: [
    ...noLookingBack,
    ...throughTheDoor,
    {
      name: 'engine-is-pure',
      comment: 'The engine runs the same in a browser, a worker and Node: no Node API, no outside layer.',
      severity: 'error',
      from: { path: '^src/engine/', pathNot: '\\.test\\.ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'engine-knows-nobody-outside',
      comment: 'Command line, PDF writer, page and store use the engine; the engine never uses them.',
      severity: 'error',
      from: { path: '^src/engine/' },
      to: { path: '^src/(cli|pdf|app|store)/' },
    },
    {
      name: 'engine-dependencies',
      comment:
        'The engine takes five libraries: valibot where orders are read, clipper2-ts where outlines are laid, big.js where money is reckoned, ical.js where the calendar file is written, fast-deep-equal where a drawing takes over what did not change.',
      severity: 'error',
      from: { path: '^src/engine/', pathNot: '\\.test\\.ts$' },
      to: {
        dependencyTypes: ['npm', 'npm-dev'],
        pathNot: 'node_modules/(valibot|clipper2-ts|big.js|ical.js|fast-deep-equal)/',
      },
    },
    {
      name: 'page-through-doors',
      comment:
        'The page uses the engine, the store and the PDF writer through their index.ts, like everybody.',
      severity: 'error',
      from: { path: '^src/app/' },
      to: { path: '^src/(store|pdf)/', pathNot: '^src/(store|pdf)/index\\.ts$' },
    },
    {
      name: 'page-and-command-line-apart',
      comment: 'The page and the command line are two ways to the same engine; neither knows the other.',
      severity: 'error',
      from: { path: '^src/app/' },
      to: { path: '^src/cli/' },
    },
    {
      name: 'nobody-uses-the-page',
      comment: 'The page is the outermost layer: nothing rests on it.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/app/' },
      to: { path: '^src/app/' },
    },
    {
      name: 'store-keeps-orders-only',
      comment:
        'The store keeps and checks what it is given: of the engine it needs the order room and the words.',
      severity: 'error',
      from: { path: '^src/store/', pathNot: '\\.test\\.ts$' },
      to: { path: '^src/(cli|pdf|app|engine/(?!(order|words|units)/))' },
    },
    {
      name: 'no-cycles',
      comment: 'Two files that need each other are one idea in two places.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.mjs', '.js'] },
  },
};
