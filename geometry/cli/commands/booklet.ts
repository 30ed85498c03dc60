/** `booklet FILE OUT.pdf`: the printable booklet, with its block file inside. */
import { readFileSync } from 'node:fs'
import {
  type Block,
  BOOKLET_LANGUAGES,
  bookletOf,
  EDITIONS,
  isBlockCount,
  LONGEST_WORDS,
  MOST_BLOCKS,
  PAPERS,
  printBooklet,
  printQuiltBooklet,
  type PrintTools,
  type Quilt,
  quiltBooklet,
  quiltReport,
  report,
  SINGLE_PAGES,
  usualPaper,
  writeBlock,
  writeQuilt,
} from '../../index.ts'
import { inputAndOutput, choiceOf, parseArguments } from '../arguments.ts'
import { partAsked, quiltTextResult, readDocument } from '../readQuiltFile.ts'
import { type CommandResult, printable, refuse, textResult } from '../result.ts'
import { writeOutput } from '../writeOutput.ts'

export async function runBooklet(args: readonly string[]): Promise<CommandResult> {
  const { options, files } = parseArguments('booklet', args, [
    '--paper',
    '--edition',
    '--only',
    '--language',
    '--blocks',
    '--title',
    '--by',
    '--part',
  ])
  const [input, output] = inputAndOutput('booklet', files, '.pdf')
  const document = readDocument(input)
  if (document.type === 'quilt') return quiltBookletResult(document.quilt, output, options)
  if (options.has('--part')) refuse('--part', 'is for a quilt file; a block has no parts')
  const only = options.has('--only') ? choiceOf('--only', options.get('--only') ?? '', SINGLE_PAGES) : null
  const edition = options.has('--edition') ? choiceOf('--edition', options.get('--edition') ?? '', EDITIONS) : 'short'
  const language = choiceOf('--language', options.get('--language') ?? 'en', BOOKLET_LANGUAGES)
  const block = withWords(document.block, options)
  const paper = choiceOf('--paper', (options.get('--paper') ?? usualPaper(block)).toLowerCase(), PAPERS)
  const value = report(block)
  const bytes = await printBooklet({
    report: value,
    block,
    booklet: bookletOf(value, block, language),
    file: new TextEncoder().encode(writeBlock(block)),
    paper,
    edition,
    only,
    tools: await printTools(),
    onProgress: process.stderr.isTTY ? showProgress : undefined,
  })
  writeOutput(output, bytes)
  return textResult('', value)
}

async function quiltBookletResult(quilt: Quilt, output: string, options: ReadonlyMap<string, string>): Promise<CommandResult> {
  const [other] = [...options.keys()].filter((option) => option !== '--paper' && option !== '--part')
  if (other !== undefined) refuse(other, 'is for the booklet of a block')
  const paper = choiceOf('--paper', (options.get('--paper') ?? usualPaper(quilt)).toLowerCase(), PAPERS)
  const part = partAsked(options.get('--part'), quilt)
  const value = quiltReport(quilt)
  const bytes = await printQuiltBooklet({
    quilt,
    report: value,
    booklet: quiltBooklet(quilt, value, part),
    file: new TextEncoder().encode(writeQuilt(quilt)),
    paper,
    tools: await printTools(),
    onProgress: process.stderr.isTTY ? showProgress : undefined,
  })
  writeOutput(output, bytes)
  return quiltTextResult('', value)
}

/** The block with what the options say of its booklet, in place of what its file says. */
function withWords(block: Block, options: ReadonlyMap<string, string>): Block {
  const [title, by, blocks] = ['--title', '--by', '--blocks'].map((option) => options.get(option))
  const number = blocks === undefined ? undefined : Number(blocks)
  if (number !== undefined && !isBlockCount(number))
    return refuse('--blocks', `${printable(blocks ?? '')} is not a whole number from 1 to ${MOST_BLOCKS}`)
  for (const [option, words] of [
    ['--title', title],
    ['--by', by],
  ] as const)
    if (words !== undefined && words.length > LONGEST_WORDS) return refuse(option, `has ${words.length} characters; ${LONGEST_WORDS} are the most`)
  const said = { ...(title === undefined ? {} : { title }), ...(by === undefined ? {} : { by }), ...(number === undefined ? {} : { blocks: number }) }
  return Object.keys(said).length === 0 ? block : { ...block, booklet: { ...block.booklet, ...said } }
}

/** In a terminal: one line, wiped when all is done. */
function showProgress(done: number, of: number): void {
  process.stderr.write(done === of ? '\r\u001b[K' : `\rMaking the pages: ${done} of ${of} chapters`)
}

/** The PDF library and its type faces are loaded when somebody prints: no other command needs them. The faces lie beside the bundled command. */
async function printTools(): Promise<PrintTools> {
  const face = (name: string): Uint8Array => readFileSync(new URL(`./faces/${name}.ttf`, import.meta.url))
  const { default: Pdf } = await import('pdfkit')
  return { Pdf, faces: { text: face('text'), strong: face('strong') } }
}
