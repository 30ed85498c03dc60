/** `booklet FILE OUT.pdf`: the printable booklet, with its block file inside. */
import { readFileSync } from 'node:fs'
import { bookletOf, PAPERS, printBooklet, type PrintTools, report, SINGLE_PAGES, usualPaper, writeBlock } from '../../index.ts'
import { inputAndOutput, choiceOf, parseArguments } from '../arguments.ts'
import { readBlockFile } from '../readBlockFile.ts'
import { type CommandResult, textResult } from '../result.ts'
import { writeOutput } from '../writeOutput.ts'

export async function runBooklet(args: readonly string[]): Promise<CommandResult> {
  const { options, files } = parseArguments('booklet', args, ['--paper', '--only'])
  const [input, output] = inputAndOutput('booklet', files, '.pdf')
  const only = options.has('--only') ? choiceOf('--only', options.get('--only') ?? '', SINGLE_PAGES) : null
  const block = readBlockFile(input)
  const paper = choiceOf('--paper', (options.get('--paper') ?? usualPaper(block)).toLowerCase(), PAPERS)
  const value = report(block)
  const bytes = await printBooklet({
    report: value,
    block,
    booklet: bookletOf(value, block),
    file: new TextEncoder().encode(writeBlock(block)),
    paper,
    only,
    tools: await printTools(),
    onProgress: process.stderr.isTTY ? showProgress : undefined,
  })
  writeOutput(output, bytes)
  return textResult('', value)
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
