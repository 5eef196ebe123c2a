/**
 * Who may import whom. Every rule below the two tables is made from them: to add a folder, add it to the table.
 * A folder may import from the folders listed for it, and from itself; nothing else.
 */
const trade = {
  common: [],
  squad: ['common'],
  themes: ['common', 'squad'],
  practice: ['common', 'squad', 'themes'],
  match: ['common', 'squad', 'themes'],
  exposure: ['common', 'squad', 'themes', 'practice', 'match'],
  fairness: ['common', 'squad', 'themes', 'practice', 'match', 'exposure'],
  rotation: ['common', 'squad', 'themes', 'practice', 'match', 'exposure', 'fairness'],
  lineup: ['common', 'squad', 'themes', 'match', 'exposure', 'fairness'],
  planning: ['common', 'squad', 'themes', 'practice', 'match', 'exposure', 'fairness', 'rotation'],
  ahead: ['common', 'squad', 'themes', 'practice', 'match', 'exposure', 'fairness', 'rotation', 'planning'],
  pitch: ['common', 'squad', 'themes', 'practice', 'match', 'exposure', 'fairness', 'rotation', 'planning'],
  touchline: ['common', 'squad', 'match', 'exposure', 'fairness', 'lineup', 'pitch'],
  family: ['common', 'squad', 'themes', 'practice', 'match', 'exposure', 'fairness'],
  rights: ['common', 'squad'],
  access: ['common', 'squad'],
}

const pure = Object.keys(trade)

const mayImport = {
  ...trade,
  exchange: pure,
  solver: pure,
  data: [...pure, 'exchange'],
  server: [...pure, 'exchange', 'solver', 'data'],
  ui: pure,
  app: [...pure, 'exchange', 'solver', 'server', 'ui'],
  cli: [...pure, 'exchange', 'solver', 'data', 'server'],
  boot: [],
}

const anyOf = (names) => `^src/(?:${names.join('|')})/`

const directions = Object.entries(mayImport).map(([folder, allowed]) => ({
  name: `${folder}-looks-down-only`,
  comment:
    allowed.length > 0 ? `src/${folder} sees: ${allowed.join(', ')}.` : `src/${folder} sees only itself.`,
  severity: 'error',
  from: { path: `^src/${folder}/` },
  to: { path: '^src/', pathNot: anyOf([folder, ...allowed]) },
}))

module.exports = {
  forbidden: [
    ...directions,
    {
      name: 'folders-are-in-the-table',
      comment: 'A folder of src that the table does not name would be bound by no rule.',
      severity: 'error',
      from: { path: '^src/', pathNot: `${anyOf(Object.keys(mayImport))}|^src/[^/]+\\.ts$` },
      to: {},
    },
    {
      name: 'the-trade-is-pure',
      comment:
        'The trade folders import nothing but each other and date-fns: no framework, database, file or clock.',
      severity: 'error',
      from: { path: anyOf(pure) },
      to: { pathNot: `${anyOf(pure)}|^node_modules/date-fns/` },
    },
    {
      name: 'the-database-client-stays-in-data',
      comment: 'Rows are mapped to our own types at one border.',
      severity: 'error',
      from: { path: '^(?:src|seeds)/', pathNot: '^src/(?:data|boot)/' },
      to: { path: '^node_modules/(?:@prisma|\\.prisma|pg)/|^src/data/generated/' },
    },
    {
      name: 'the-exact-solver-stays-in-one-file',
      severity: 'error',
      from: { path: '^(?:src|seeds)/', pathNot: '^src/solver/highs\\.ts$' },
      to: { path: '^node_modules/highs/' },
    },
    {
      name: 'zod-stays-at-the-borders',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/(?:exchange|data|server|cli)/' },
      to: { path: '^node_modules/zod/' },
    },
    {
      name: 'no-barrels',
      comment: 'A file is imported by its own name.',
      severity: 'error',
      from: {},
      to: { path: '/index\\.(?:ts|tsx|mjs)$', pathNot: '^node_modules/' },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      from: { path: '^src/', pathNot: '/generated/' },
      to: { circular: true },
    },
    {
      name: 'imports-resolve',
      severity: 'error',
      from: { pathNot: '/generated/' },
      to: { couldNotResolve: true },
    },
    {
      name: 'program-does-not-import-tests',
      severity: 'error',
      from: { path: '^(?:src|seeds)/' },
      to: { path: '^tests/' },
    },
  ],
  options: {
    doNotFollow: { path: ['node_modules', '/generated/'] },
    exclude: { path: '^\\.next/' },
    tsPreCompilationDeps: true,
    preserveSymlinks: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
  },
}
