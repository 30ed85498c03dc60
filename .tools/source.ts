/**
 * Source files, read once: their tree, their comments, what they import and what they export. The parser is the one that builds the page.
 */
import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { parseSync } from 'vite'

/** A node of the tree, as ESTree has it. */
export interface Node {
  readonly type: string
  readonly start: number
  readonly end: number
  readonly [key: string]: unknown
}

export interface Source {
  readonly path: string
  readonly text: string
  readonly program: Node
  readonly comments: readonly { readonly start: number; readonly end: number; readonly value: string }[]
  readonly exports: readonly Export[]
  /** Files of which everything is exported again (`export * from`). */
  readonly passesOn: readonly string[]
  readonly imports: readonly Import[]
}

export interface Export {
  readonly name: string
  /** Handed on from another file: it is defined there. */
  readonly from: string | null
  /** What it is called there. */
  readonly there: string
}

export interface Import {
  /** The file, from the top of the checkout; `null` for a package. */
  readonly from: string | null
  /** `*` for all of it. */
  readonly name: string
}

/** The files of some folders that belong to the project, new ones included. */
export function sourceFiles(folders: readonly string[]): string[] {
  const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '--', ...folders], { encoding: 'utf8' })
  return listed.split('\n').filter((path) => path !== '' && existsSync(path))
}

export const isCode = (path: string): boolean => /\.(ts|tsx|mjs)$/.test(path)

export function readSource(path: string): Source {
  const text = readFileSync(path, 'utf8')
  const { program, comments, module, errors } = parseSync(path, text)
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`)
  const fileOf = (request: string): string | null => (request.startsWith('.') ? join(dirname(path), request) : null)
  const entries = module.staticExports.flatMap((statement) => statement.entries)
  const exports = entries.flatMap(({ exportName, importName, moduleRequest }) => {
    const name = exportName.name ?? 'default'
    return exportName.kind === 'None' ? [] : [{ name, from: moduleRequest && fileOf(moduleRequest.value), there: importName.name ?? name }]
  })
  const passesOn = entries.flatMap(({ exportName, moduleRequest }) =>
    exportName.kind === 'None' && moduleRequest ? [fileOf(moduleRequest.value) ?? ''] : [],
  )
  const imported = module.staticImports.flatMap(({ moduleRequest, entries: names }) =>
    names.map(({ importName }) => ({
      from: fileOf(moduleRequest.value),
      name: importName.kind === 'Default' ? 'default' : (importName.name ?? '*'),
    })),
  )
  const loaded = module.dynamicImports.map(({ moduleRequest }) => ({
    from: fileOf(text.slice(moduleRequest.start + 1, moduleRequest.end - 1)),
    name: '*',
  }))
  const types = [...text.matchAll(/\bimport\('(\.[^']+)'\)\.(\w+)/g)].map(([, request, name]) => ({
    from: fileOf(request as string),
    name: name as string,
  }))
  return { path, text, program: program as unknown as Node, comments, exports, passesOn, imports: [...imported, ...loaded, ...types] }
}

/** Every node below a node, and the way down to it. */
export function walk(node: Node, visit: (node: Node, above: readonly Node[]) => void, above: readonly Node[] = []): void {
  visit(node, above)
  for (const value of Object.values(node))
    for (const below of Array.isArray(value) ? value : [value]) if (isNode(below)) walk(below, visit, [...above, node])
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && typeof (value as Node).type === 'string'

/** Lines are counted from 1. */
export const lineAt = (text: string, place: number): number => text.slice(0, place).split('\n').length

/** The comment that ends where a statement begins, with nothing but blanks between. */
export const docstringOf = ({ text, comments }: Source, start: number): string | null =>
  comments.find(({ end, value }) => value.startsWith('*') && end <= start && text.slice(end, start).trim() === '')?.value ?? null
