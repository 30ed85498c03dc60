/** A quilt from a file on disk or from standard input; and which of the two a file is, a block or a quilt. */
import { type Block, inEnglish, isError, partCount, type Quilt, type QuiltReport, readBlock, readQuilt, sanitiseLine } from '../index.ts'
import { textOf } from './readBlockFile.ts'
import { type CommandResult, printable, refuse } from './result.ts'

type Document = { readonly type: 'block'; readonly block: Block } | { readonly type: 'quilt'; readonly quilt: Quilt }

/** The quilt in a file. Refuses what is no quilt, and names the place in the file. */
export const readQuiltFile = (file: string): Quilt => quiltIn(file, textOf(file))

/** The block or the quilt in a file, whichever its format says. */
export function readDocument(file: string): Document {
  const text = textOf(file)
  if (saysQuilt(text)) return { type: 'quilt', quilt: quiltIn(file, text) }
  const read = readBlock(text)
  return read.ok ? { type: 'block', block: read.value } : refuse(read.place === 'file' ? printable(file) : read.place, inEnglish(read.message))
}

function quiltIn(file: string, text: string): Quilt {
  const read = readQuilt(text)
  return read.ok ? read.value : refuse(read.place === 'file' ? printable(file) : read.place, inEnglish(read.message))
}

/** The part that `--part` asks for, from 1; null for the whole quilt. */
export function partAsked(given: string | undefined, quilt: Quilt): number | null {
  if (given === undefined) return null
  const [part, most] = [/^[0-9]{1,6}$/.test(given) ? Number(given) : 0, partCount(quilt)]
  return part >= 1 && part <= most
    ? part
    : refuse('--part', `${printable(given)} is not one of the parts of this quilt: give a whole number from 1 to ${most}`)
}

function saysQuilt(text: string): boolean {
  try {
    return (JSON.parse(text) as { format?: unknown } | null)?.format === 'nestwright.quilt'
  } catch {
    return false
  }
}

/** Text for people, with a line on standard error for each problem that keeps the quilt from being sewn. */
export function quiltTextResult(stdout: string, { problems }: QuiltReport): CommandResult {
  const lines = problems.filter(isError).map(({ code, at, message }) => `${code} at ${at.join(', ')}: ${sanitiseLine(inEnglish(message))}\n`)
  return { exitStatus: lines.length === 0 ? 0 : 1, stdout, stderr: lines.join('') }
}
