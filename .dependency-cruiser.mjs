/**
 * Who may import whom, types included. Run by `npm run rooms`, and with `npm test`.
 *
 * Each room of the house may read itself and the rooms named beside it, and nothing else: so imports point one way, and there are no circles.
 * A room is a folder; files that lie deeper belong to the same room.
 */

/** Lengths, shapes and formats: every room of the geometry may read these. `solvers` are mathematics without a word of fabric. */
const GROUND = ['values', 'exact', 'solvers']

const BLOCK = [...GROUND, 'plane', 'units', 'colour', 'block']
const SEWN = [...BLOCK, 'piecing', 'pressing', 'neighbours']
const REPORT = [...SEWN, 'edits', 'cutting', 'colouring', 'quilting', 'report']
const WRITING = [...REPORT, 'quilt', 'words', 'writing']

const geometry = {
  values: [],
  exact: ['values'],
  solvers: [],
  plane: GROUND,
  colour: GROUND,
  units: [...GROUND, 'plane'],
  block: [...GROUND, 'plane', 'units', 'colour'],
  edits: BLOCK,
  piecing: BLOCK,
  pressing: [...BLOCK, 'piecing'],
  neighbours: [...BLOCK, 'piecing', 'pressing'],
  cutting: BLOCK,
  quilting: BLOCK,
  colouring: [...BLOCK, 'edits', 'cutting'],
  report: [...SEWN, 'edits', 'cutting', 'colouring', 'quilting'],
  quilt: REPORT,
  words: ['values', 'exact'],
  writing: [...REPORT, 'quilt', 'words'],
  printing: WRITING,
}

const DOCUMENT = ['words', 'document']
const KEPT = [...DOCUMENT, 'workers', 'keeping']
const DRAWN = [...KEPT, 'drawing', 'controls']
const BOARD = [...DRAWN, 'views', 'board']

const web = {
  words: [],
  workers: DOCUMENT,
  document: ['words'],
  keeping: ['words', 'workers', 'document'],
  drawing: DOCUMENT,
  controls: KEPT,
  views: DRAWN,
  board: [...DRAWN, 'views'],
  tray: BOARD,
  library: BOARD,
  sheets: [...BOARD, 'tray', 'library'],
  quilt: [...BOARD, 'tray', 'library', 'sheets'],
  app: [...BOARD, 'tray', 'library', 'sheets', 'quilt', 'style'],
  offline: [],
}

const roomRules = (house, rooms) =>
  Object.entries(rooms).map(([room, reads]) => ({
    name: `${house}/${room} reads ${reads.length === 0 ? 'no other room' : `only ${reads.join(', ')}`}`,
    severity: 'error',
    from: { path: `^${house}/${room}/` },
    to: { path: `^${house}/`, pathNot: [room, ...reads].map((name) => `^${house}/${name}/`) },
  }))

const rule = (name, from, to) => ({ name, severity: 'error', from, to })

export default {
  forbidden: [
    ...roomRules('geometry', geometry),
    ...roomRules('web', web),
    rule('no circles', {}, { circular: true }),
    rule(
      'geometry is pure: no screen, no library but a queue and the writer of PDFs',
      { path: '^geometry/', pathNot: '^geometry/cli' },
      { path: '^(web|node_modules)/', pathNot: 'pdfkit|flatqueue' },
    ),
    rule('geometry is pure: nothing of Node', { path: '^geometry/', pathNot: '^geometry/cli' }, { dependencyTypes: ['core'] }),
    rule('the screen reads geometry by its public face', { path: '^web/' }, { path: '^geometry/', pathNot: '^geometry/index\\.ts$' }),
    rule(
      'the command line reads geometry by its public face',
      { path: '^geometry/cli' },
      { path: '^geometry/', pathNot: '^geometry/(index\\.ts|cli)' },
    ),
    rule('nothing shipped reads tests', { path: '^(geometry|web)/' }, { path: '^(test|e2e|\\.tools)/' }),
    // The builds name the file of the PDF library that they take.
    rule('every import is found', {}, { couldNotResolve: true, pathNot: '^(virtual:|vite/client|pdfkit$)' }),
  ],
  options: {
    parser: 'swc',
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.mjs', '.js', '.css'] },
  },
}
