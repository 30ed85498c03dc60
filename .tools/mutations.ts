/**
 * Every place of a source file where one small change makes it wrong: a comparison swapped, a branch dropped, a bound one more or less, a yes for a no, plus for
 * minus. Types, comments and words are left alone, and so is what only says what went wrong.
 */
import { isEquivalent } from './equivalentMutations.ts'
import { lineAt, type Node, readSource } from './source.ts'

export interface Mutation {
  readonly file: string
  readonly line: number
  readonly start: number
  readonly end: number
  readonly by: string
  /** What stands there, and what is put in its place. */
  readonly says: string
}

const OPERATORS: Readonly<Record<string, readonly string[]>> = {
  '<': ['<=', '>'],
  '<=': ['<', '>='],
  '>': ['>=', '<'],
  '>=': ['>', '<='],
  '===': ['!=='],
  '!==': ['==='],
  '&&': ['||'],
  '||': ['&&'],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
}

/** Calls that only a mistake of ours can reach. */
const NEVER_REACHED = ['impossible']

export function mutationsIn(file: string): Mutation[] {
  const { text, program } = readSource(file)
  const found: Mutation[] = []
  const put = (start: number, end: number, by: string): void => {
    if (isEquivalent(text, { file, start, end, by })) return
    found.push({ file, line: lineAt(text, start), start, end, by, says: `${shortened(text.slice(start, end))} → ${by}` })
  }

  const visit = (node: Node): void => {
    if (leftAlone(node)) return
    mutate(node)
    for (const [key, value] of Object.entries(node))
      if (key !== 'typeAnnotation' && key !== 'returnType')
        for (const below of Array.isArray(value) ? value : [value]) if (isNode(below)) visit(below)
  }

  const mutate = (node: Node): void => {
    if (node.type === 'BinaryExpression' || node.type === 'LogicalExpression') swapOperator(node)
    if (node.type === 'IfStatement') for (const by of ['false', 'true']) putInPlaceOf(node.test as Node, by)
    if (node.type === 'ConditionalExpression') for (const by of ['false', 'true']) putInPlaceOf(node.test as Node, by)
    if (node.type === 'UnaryExpression' && node.operator === '!') putInPlaceOf(node, text.slice((node.argument as Node).start, node.end))
    if (node.type === 'Literal' && typeof node.value === 'boolean') putInPlaceOf(node, String(!node.value))
    if (node.type === 'Literal' && typeof node.value === 'number') for (const by of [node.value + 1, node.value - 1]) putInPlaceOf(node, `(${by})`)
  }

  const putInPlaceOf = ({ start, end }: Node, by: string): void => put(start, end, by)

  const swapOperator = (node: Node): void => {
    const [left, right] = [node.left as Node, node.right as Node]
    if ([left, right].some(isText)) return
    const operator = String(node.operator)
    const start = text.indexOf(operator, left.end)
    for (const by of OPERATORS[operator] ?? []) if (start < right.start) put(start, start + operator.length, by)
  }

  visit(program)
  return found
}

function leftAlone(node: Node): boolean {
  if (node.type === 'ImportDeclaration' || node.type === 'ThrowStatement') return true
  if (/^TS(?!As|NonNull|Satisfies)/.test(node.type)) return true
  return node.type === 'CallExpression' && NEVER_REACHED.includes(String((node.callee as Node).name))
}

const isText = ({ type, value, left, right }: Node): boolean =>
  type === 'TemplateLiteral' || typeof value === 'string' || (type === 'BinaryExpression' && (isText(left as Node) || isText(right as Node)))

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && typeof (value as Node).type === 'string'

const shortened = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}…` : text).replaceAll(/\s+/g, ' ')
