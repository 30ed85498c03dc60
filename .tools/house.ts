/**
 * `npm run house`: how well the house is kept, as a table.
 *
 * Out     files in the fullest folders; imports that break the table of rooms; functions and components that are too long and do not say why;
 *         names that two files define; exports that nobody imports; exported functions of the geometry that do not say what goes in and out.
 */
import { basename, dirname, extname } from 'node:path'
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { docstringOf, isCode, lineAt, type Node, readSource, type Source, sourceFiles, walk } from './source.ts'

export const MOST_FILES = 25
export const MOST_LINES = { function: 60, component: 120 } as const
/** Where a docstring holds this word, it says why the function is as long as it is. */
const WHY_LONG = /\blong\b/i

const SHIPPED = ['geometry', 'web']
const ALL = [...SHIPPED, 'test', 'e2e', '.tools', 'vite.config.ts', 'vitest.config.ts', 'playwright.config.ts']

export interface Finding {
  readonly file: string
  readonly says: string
}

export interface House {
  readonly folders: readonly { readonly folder: string; readonly files: number }[]
  readonly long: readonly Finding[]
  readonly doubled: readonly Finding[]
  readonly unused: readonly Finding[]
  /** Dead in the product: only tests import it, and its own file does not use it either. */
  readonly onlyTested: readonly Finding[]
  readonly undocumented: readonly Finding[]
}

/** Every file that belongs to the project and may hold code. */
export const projectFiles = (): string[] => sourceFiles(ALL)

export function house(): House {
  const files = projectFiles()
  const sources = files.filter(isCode).map(readSource)
  const shipped = sources.filter(({ path }) => SHIPPED.some((folder) => path.startsWith(`${folder}/`)))
  const { unused, onlyTested } = unusedExports(sources, shipped)
  return {
    folders: folderSizes(files),
    long: shipped.flatMap(longFunctions),
    doubled: doubledNames(shipped),
    unused,
    onlyTested,
    undocumented: shipped.filter(({ path }) => path.startsWith('geometry/')).flatMap(undocumentedFunctions),
  }
}

/** Fullest first. Data (a test's cases, the page's public files) is not counted: only what is code, or styles code. */
export function folderSizes(files: readonly string[]): { folder: string; files: number }[] {
  const sizes = new Map<string, number>()
  for (const file of files) if (isCode(file) || file.endsWith('.css')) sizes.set(dirname(file), (sizes.get(dirname(file)) ?? 0) + 1)
  return [...sizes].map(([folder, count]) => ({ folder, files: count })).sort((a, b) => b.files - a.files || a.folder.localeCompare(b.folder))
}

const FUNCTIONS = ['FunctionDeclaration', 'FunctionExpression', 'ArrowFunctionExpression']

function longFunctions(source: Source): Finding[] {
  const found: Finding[] = []
  walk(source.program, (node, above) => {
    if (!FUNCTIONS.includes(node.type)) return
    const lines = lineAt(source.text, node.end) - lineAt(source.text, node.start) + 1
    const name = nameOf(node, above)
    const type = source.path.endsWith('.tsx') && /^[A-Z]/.test(name) ? 'component' : 'function'
    if (lines <= MOST_LINES[type] || WHY_LONG.test(docstringAround(source, node, above))) return
    found.push({ file: `${source.path}:${lineAt(source.text, node.start)}`, says: `${type} ${name} has ${lines} lines` })
  })
  return found
}

/** By what a function is called: its own name, or that of what it is given to. */
function nameOf(node: Node, above: readonly Node[]): string {
  const names = [node, ...above.slice(-3).reverse()].map((one) => (one.id ?? one.key) as { readonly name?: string } | null | undefined)
  return names.find((one) => typeof one?.name === 'string')?.name ?? 'without a name'
}

const docstringAround = (source: Source, node: Node, above: readonly Node[]): string =>
  [node, ...above.slice(-4)].map(({ type, start }) => (type === 'Program' ? null : docstringOf(source, start))).join(' ')

/** A name is doubled where two files define it; where one hands on what the other defines it is one. */
function doubledNames(sources: readonly Source[]): Finding[] {
  const places = new Map<string, string[]>()
  for (const { path, exports } of sources)
    for (const { name, from } of exports) if (from === null && name !== 'default') places.set(name, [...(places.get(name) ?? []), path])
  return [...places]
    .filter(([, paths]) => paths.length > 1)
    .map(([name, paths]) => ({ file: paths.join(', '), says: name }))
    .sort((a, b) => a.says.localeCompare(b.says))
}

/** What starts by itself exports nothing that somebody has to import. */
const STARTS = /^(geometry\/cli\.ts|web\/(main|app\/main)\.tsx|.*\.worker\.ts)$/

function unusedExports(sources: readonly Source[], shipped: readonly Source[]): { unused: Finding[]; onlyTested: Finding[] } {
  const users = usersOfExports(sources)
  const byPath = new Map(sources.map((source) => [source.path, source]))
  const found = shipped
    .filter(({ path }) => !STARTS.test(path))
    .flatMap(({ path, exports }) => exports.map(({ name }) => ({ file: path, says: name })))
  const usersOf = ({ file, says }: Finding): string[] => [...(users.get(`${file} ${says}`) ?? [])]
  const isShipped = (path: string): boolean => SHIPPED.some((folder) => path.startsWith(`${folder}/`))
  return {
    unused: found.filter((one) => usersOf(one).length === 0),
    onlyTested: found.filter((one) => usersOf(one).length > 0 && !usersOf(one).some(isShipped) && !usesItself(byPath.get(one.file), one.says)),
  }
}

/** Whether a file uses a name that it exports: then its tests may import it, and it is not dead. */
function usesItself(source: Source | undefined, name: string): boolean {
  if (source === undefined) return false
  let uses = 0
  walk(source.program, (node, above) => {
    if (node.type === 'Identifier' && node.name === name && above.at(-1)?.type !== 'ExportSpecifier') uses++
  })
  return uses > 1
}

/** Who imports each export, by `file name`; an export that another file hands on is used where that one is. */
function usersOfExports(sources: readonly Source[]): Map<string, Set<string>> {
  const byPath = new Map(sources.map((source) => [source.path, source]))
  const users = new Map<string, Set<string>>()
  const use = (path: string, name: string, user: string): void => {
    const key = `${path} ${name}`
    users.set(key, (users.get(key) ?? new Set()).add(user))
    const source = byPath.get(path)
    const own = source?.exports.find((one) => one.name === name)
    if (own?.from) use(own.from, own.there, user)
    else if (own === undefined) for (const from of source?.passesOn ?? []) if (exportsOf(from).includes(name)) use(from, name, user)
  }
  const exportsOf = (path: string): string[] => {
    const source = byPath.get(path)
    return source === undefined ? [] : [...source.exports.map(({ name }) => name), ...source.passesOn.flatMap(exportsOf)]
  }
  const taken = new Set(sources.flatMap(({ text }) => [...text.matchAll(/\.([A-Za-z_]\w*)/g)].map(([, name]) => name as string)))
  for (const { path, text, imports } of sources)
    for (const { from, name } of imports) {
      if (from === null) continue
      // Of a file imported as a whole, what the importing text mentions, or what is taken from something anywhere: it may be loaded here and used there.
      const mentioned = (one: string): boolean => one === 'default' || new RegExp(`\\b${one}\\b`).test(text) || taken.has(one)
      const names = name === '*' ? exportsOf(from).filter(mentioned) : [name]
      for (const one of names) use(from, one, path)
    }
  return users
}

/** A file's first comment speaks for the function after which the file is named, and for the only one that it exports. */
function undocumentedFunctions(source: Source): Finding[] {
  const statements = (source.program.body as Node[]).filter(({ type }) => type === 'ExportNamedDeclaration')
  const functions = statements.flatMap((statement) => functionNames(statement).map((name) => ({ name, start: statement.start })))
  const speaksFor = (name: string): boolean => name === basename(source.path, extname(source.path)) || functions.length === 1
  const first = source.comments[0]?.start === 0 && source.comments[0].value.startsWith('*')
  return functions
    .filter(({ name, start }) => docstringOf(source, start) === null && !(first && speaksFor(name)))
    .map(({ name, start }) => ({ file: `${source.path}:${lineAt(source.text, start)}`, says: name }))
}

function functionNames({ declaration }: Node): string[] {
  const declared = declaration as (Node & { readonly id?: { readonly name: string }; readonly declarations?: readonly Node[] }) | null
  if (declared?.type === 'FunctionDeclaration') return [declared.id?.name ?? '']
  if (declared?.type !== 'VariableDeclaration') return []
  return (declared.declarations ?? [])
    .filter(({ init }) => FUNCTIONS.includes((init as Node | null)?.type ?? ''))
    .map(({ id }) => (id as unknown as { readonly name: string }).name)
}

function print(title: string, findings: readonly Finding[], limit = 40): void {
  console.log(`\n${title}: ${findings.length}`)
  for (const { file, says } of findings.slice(0, limit)) console.log(`  ${says.padEnd(40)} ${file}`)
  if (findings.length > limit) console.log(`  … and ${findings.length - limit} more (--all lists them)`)
}

function printHouse(limit: number): void {
  const { folders, long, doubled, unused, onlyTested, undocumented } = house()
  console.log(`Files per folder (${MOST_FILES} at most)`)
  for (const { folder, files } of folders.slice(0, 8))
    console.log(`  ${String(files).padStart(3)}  ${folder}${files > MOST_FILES ? '   too many' : ''}`)
  const rooms = spawnSync(process.execPath, ['.tools/rooms.mjs'], { encoding: 'utf8' }).stdout.trim().split('\n')
  console.log(`\nImports: ${rooms.at(-1)}`)
  for (const line of rooms.slice(0, -1)) console.log(`  ${line}`)
  print(`Functions over ${MOST_LINES.function} lines and components over ${MOST_LINES.component} that do not say why`, long, limit)
  print('Names that two files define', doubled, limit)
  print('Exports that nobody imports', unused, limit)
  print('Exports that only tests use', onlyTested, limit)
  print('Exported functions of the geometry without a docstring', undocumented, limit)
}

if (process.argv[1] === fileURLToPath(import.meta.url)) printHouse(process.argv.includes('--all') ? Number.POSITIVE_INFINITY : 40)
