#!/usr/bin/env node
/**
 * The command line: a block file in, its report, cut list, steps, booklet, a setting of it, or a size chart out.
 *
 * In      the arguments after `nestwright`.
 * Out     0 done; 1 the layout has an error among its problems (still printed); 2 the file or the arguments could not be used: one line
 *         on standard error that names the place, nothing on standard output.
 * The only file of geometry that knows Node.
 */
import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { constants, inflateSync } from 'node:zlib'
import {
  asSewn,
  beginsLikeBlock,
  type Block,
  blockAmong,
  bookletOf,
  CHART_KINDS,
  type ChartKind,
  chartCsv,
  chartText,
  clothCsv,
  cutListCsv,
  cutListText,
  type Embedded,
  ERRORS,
  filesInPdf,
  isPdf,
  MOST_COPIES,
  MOST_BYTES,
  MOST_UNPACKED,
  PAPERS,
  PRESSINGS,
  parseRational,
  printBooklet,
  type PrintTools,
  type Rational,
  type Report,
  readBlock,
  report,
  type SettingAsk,
  SINGLE_PAGES,
  settingReport,
  seenOnOneLine,
  sizeChart,
  stepsText,
  TURNINGS,
  unitsCsv,
  usualPaper,
  VIEWS,
  viewSvg,
  writeBlock,
} from './index.ts'

const USAGE = `Usage: nestwright COMMAND

  report FILE                 the report of a block file, as JSON
  cutlist FILE [--csv]        what to cut, for people or as CSV
    --of pieces|units|cloth   which table --csv prints
  steps FILE                  the numbered making steps
  chart [options]             a size chart
    --kind geese|hst|hourglass|diamond   (geese, four at a time)
    --unit in|cm  --seam 1/4  --from 1 --to 12 --step 1/2  --csv
    --larger 1/8              squares cut so much larger, to be trimmed
  setting FILE --columns 3 --rows 2    copies set edge to edge, as JSON
    --turn none|alternate|free         every other one turned a quarter; or as nests best
    --press same|alternate|free        every other one pressed the opposite way; or as nests best
  sewn FILE SEWN              what a sewn block differs in from the one laid out, as JSON
  booklet FILE OUT.pdf        the printable booklet
    --paper a4|letter         (Letter for inches, A4 for centimetres)
    --only cutlist|chart|colouring|templates   these pages alone
  picture FILE OUT.svg        a picture of the block, to scale
    --view cloth|value|outline|wrong|seams|quilting

FILE may be a booklet: the block that lies inside is read.

Exit status: 0 done; 1 the layout has an error among its problems; 2 the file or the arguments could not be used.
`

/** Patches above which a report is printed on one line: nobody reads it line by line, and it is half as long. */
const MOST_SPREAD = 5_000

/** What cannot be used, and why: becomes the one line on standard error. */
class Refusal extends Error {}

const refuse = (place: string, message: string): never => {
  throw new Refusal(place === '' ? message : `${place}: ${message}`)
}

interface Answer {
  readonly status: 0 | 1 | 2
  readonly out: string
  readonly err: string
}

const done = (out: string): Answer => ({ status: 0, out, err: '' })

function answer(args: readonly string[]): Answer | Promise<Answer> {
  const [command, ...rest] = args
  if (command === undefined)
    return refuse('', 'Usage: nestwright report|cutlist|steps|setting|sewn|chart|booklet|picture …; nestwright --help says more')
  if (command === '--help' || command === '-h' || command === 'help') return done(USAGE)
  if (rest.includes('--help')) return done(USAGE)
  switch (command) {
    case 'report':
      return aboutBlock(command, rest, [], (said) => `${JSON.stringify(said, null, said.patches.length > MOST_SPREAD ? 0 : 2)}\n`, false)
    case 'cutlist':
      return aboutBlock(command, rest, ['--csv'], cutList, true, ['--of'])
    case 'steps':
      return aboutBlock(command, rest, [], (said, block) => stepsText(bookletOf(said, block)), true)
    case 'setting':
      return settingOf(rest)
    case 'sewn':
      return sewnBeside(rest)
    case 'chart':
      return done(chart(rest))
    case 'booklet':
      return bookletInto(rest)
    case 'picture':
      return pictureInto(rest)
    default:
      return refuse(shown(command), 'no such command; there are report, cutlist, steps, setting, sewn, chart, booklet and picture')
  }
}

type Printed = (said: Report, block: Block, given: Given<string>) => string

const TABLES = { pieces: cutListCsv, units: unitsCsv, cloth: clothCsv } as const
const TABLE_NAMES = ['pieces', 'units', 'cloth'] as const

function cutList(said: Report, block: Block, { flags, options }: Given<string>): string {
  const of = options.get('--of')
  if (!flags.has('--csv')) return of === undefined ? cutListText(said, block) : refuse('--of', 'says which table --csv prints; give --csv too')
  return TABLES[choice('--of', of ?? 'pieces', TABLE_NAMES)](said, block)
}

function aboutBlock(
  command: string,
  args: readonly string[],
  known: readonly string[],
  printed: Printed,
  nameProblems: boolean,
  names: readonly string[] = [],
): Answer {
  const given = optionsIn(command, args, names, known)
  const [file, another] = given.files
  if (file === undefined) return refuse(command, 'give the block file to read')
  if (another !== undefined) return refuse(shown(another), `${command} reads one file`)
  const block = blockIn(file)
  const said = report(block)
  const named = errorsOf(said)
  return { status: named === '' ? 0 : 1, out: printed(said, block, given), err: nameProblems ? named : '' }
}

/** A line for each problem that keeps the block from being sewn. */
const errorsOf = ({ problems }: Report): string =>
  problems
    .filter(({ code }) => ERRORS.has(code))
    .map(({ code, at, message }) => `${code} at ${at.join(', ')}: ${seenOnOneLine(message)}\n`)
    .join('')

function blockIn(file: string): Block {
  const read = readBlock(textIn(file))
  return read.ok ? read.value : refuse(read.place === 'file' ? shown(file) : read.place, read.message)
}

function textIn(file: string): string {
  const bytes = bytesIn(file)
  if (isPdf(bytes)) return blockInside(file, bytes)
  if (bytes.length === 0) return refuse(shown(file), 'the file is empty')
  if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf)
    return refuse(shown(file), 'begins with a byte order mark; save it as UTF-8 without one')
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return refuse(shown(file), 'is not text in UTF-8')
  }
}

/** A booklet carries its block file inside. */
function blockInside(file: string, bytes: Uint8Array): string {
  const refused = 'is a PDF without a block file inside; give a block file, or a booklet printed here'
  return blockAmong(textsInside(bytes)) ?? refuse(shown(file), refused)
}

function textsInside(bytes: Uint8Array): string[] {
  const texts: string[] = []
  let room = MOST_UNPACKED
  for (const found of filesInPdf(bytes)) {
    if (!beginsLikeBlock(begunOf(found))) continue
    const text = unpacked(found, room)
    if (text === null) break
    room -= text.length
    texts.push(text)
  }
  return texts
}

/** The first letters of a file inside a PDF: enough to see what it is. */
function begunOf({ bytes, packed }: Embedded): string {
  const first = bytes.subarray(0, 256)
  try {
    return new TextDecoder().decode(packed ? inflateSync(first, { finishFlush: constants.Z_SYNC_FLUSH }) : first)
  } catch {
    return ''
  }
}

/** Empty where it is no text; null where it is more than there is room for. */
function unpacked({ bytes, packed }: Embedded, room: number): string | null {
  if (room <= 0 || (!packed && bytes.length > room)) return null
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(packed ? inflateSync(bytes, { maxOutputLength: room }) : bytes)
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ERR_BUFFER_TOO_LARGE' ? null : ''
  }
}

function bytesIn(file: string): Uint8Array {
  try {
    const bytes = readFileSync(file === '-' ? 0 : file)
    return bytes.length > MOST_BYTES ? refuse(shown(file), TOO_LARGE) : bytes
  } catch (error) {
    if (error instanceof Refusal) throw error
    return refuse(shown(file), CANNOT_READ[(error as NodeJS.ErrnoException).code ?? ''] ?? 'cannot be read')
  }
}

const TOO_LARGE = 'is too large to be a block file; give another'

const CANNOT_READ: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EISDIR: 'is a folder; give a block file',
  EACCES: 'may not be read by this user',
  ENOTDIR: 'no such file',
  ENAMETOOLONG: 'is too long a name; give the name of a block file',
  ERR_FS_FILE_TOO_LARGE: TOO_LARGE,
}

const CHART_OPTIONS = ['--kind', '--unit', '--seam', '--from', '--to', '--step', '--larger'] as const
type ChartOption = (typeof CHART_OPTIONS)[number]

/** What a ruler and a maker would ask for first, in each measure. */
const CHART_DEFAULTS = {
  in: { '--seam': '1/4', '--from': '1', '--to': '12', '--step': '1/2' },
  cm: { '--seam': '0.75', '--from': '2', '--to': '30', '--step': '1' },
} as const
const MOST_ROWS = 2000

function chart(args: readonly string[]): string {
  const { options, csv } = chartOptions(args)
  const unit = choice('--unit', options.get('--unit') ?? 'in', ['in', 'cm'] as const)
  const kind = choice<ChartKind>('--kind', options.get('--kind') ?? 'geese', CHART_KINDS)
  const length = (name: keyof (typeof CHART_DEFAULTS)['in']): Rational => positive(name, options.get(name) ?? CHART_DEFAULTS[unit][name])
  const [seam, from, to, step] = [length('--seam'), length('--from'), length('--to'), length('--step')]
  if (to.n * from.d < from.n * to.d) refuse('--to', 'must not be less than --from')
  const rows = ((to.n * from.d - from.n * to.d) * step.d) / (to.d * from.d * step.n) + 1n
  if (rows > BigInt(MOST_ROWS)) refuse('--step', `would make ${rows} rows; the most is ${MOST_ROWS}`)
  const larger = options.get('--larger')
  const oversize = larger === undefined ? {} : { oversize: positive('--larger', larger) }
  const sizes = sizeChart({ kind, unit, seam, from, to, step, ...oversize })
  return csv ? chartCsv(sizes) : chartText(sizes)
}

async function bookletInto(args: readonly string[]): Promise<Answer> {
  const { options, files } = optionsIn('booklet', args, ['--paper', '--only'], [])
  const [file, out] = inAndOut('booklet', files, '.pdf')
  const only = options.has('--only') ? choice('--only', options.get('--only') ?? '', SINGLE_PAGES) : null
  const block = blockIn(file)
  const paper = choice('--paper', (options.get('--paper') ?? usualPaper(block)).toLowerCase(), PAPERS)
  const said = report(block)
  const bytes = await printBooklet({
    report: said,
    block,
    booklet: bookletOf(said, block),
    file: new TextEncoder().encode(writeBlock(block)),
    paper,
    only,
    tools: await printTools(),
    onProgress: process.stderr.isTTY ? showProgress : undefined,
  })
  return written(out, bytes, said)
}

/** Where somebody looks on: one line, wiped when all is done. */
function showProgress(done: number, of: number): void {
  process.stderr.write(done === of ? '\r\u001b[K' : `\rMaking the pages: ${done} of ${of} chapters`)
}

/** Read when somebody prints: the library and its type are of no use to any other command. */
async function printTools(): Promise<PrintTools> {
  const face = (name: string): Uint8Array => readFileSync(new URL(`./faces/${name}.ttf`, import.meta.url))
  const { default: Pdf } = await import('pdfkit')
  return { Pdf, faces: { text: face('text'), strong: face('strong') } }
}

function pictureInto(args: readonly string[]): Answer {
  const { options, files } = optionsIn('picture', args, ['--view'], [])
  const [file, out] = inAndOut('picture', files, '.svg')
  const view = choice('--view', options.get('--view') ?? 'cloth', VIEWS)
  const block = blockIn(file)
  const said = report(block)
  return written(out, new TextEncoder().encode(viewSvg(view, said, block)), said)
}

function inAndOut(command: string, [file, out, another]: readonly string[], ending: string): [string, string] {
  if (file === undefined || out === undefined) return refuse(command, `give the block file to read and the file to write, such as block${ending}`)
  if (another !== undefined) return refuse(shown(another), `${command} reads one file and writes one`)
  if (!out.toLowerCase().endsWith(ending)) return refuse(shown(out), `give the file to write a name that ends in ${ending}`)
  return [file, out]
}

/** The whole file or nothing: it is written beside its place, then put there. */
function written(out: string, bytes: Uint8Array, said: Report): Answer {
  const beside = `${out}.${process.pid}.part`
  try {
    writeFileSync(beside, bytes)
    renameSync(beside, out)
  } catch (error) {
    swept(beside)
    return refuse(shown(out), CANNOT_WRITE[(error as NodeJS.ErrnoException).code ?? ''] ?? 'cannot be written')
  }
  const named = errorsOf(said)
  return { status: named === '' ? 0 : 1, out: '', err: named }
}

/** What was begun goes; where not even that may be done, nothing was begun. */
function swept(file: string): void {
  try {
    rmSync(file, { force: true })
  } catch {}
}

const CANNOT_WRITE: Readonly<Record<string, string>> = {
  ENOENT: 'its folder does not exist',
  ENOTDIR: 'its folder does not exist',
  EISDIR: 'is a folder; give a file name',
  EACCES: 'may not be written by this user',
  EPERM: 'may not be written by this user',
  EROFS: 'lies on a disk that may not be written',
  ENOSPC: 'the disk is full',
  ENAMETOOLONG: 'is too long a name; give a shorter one',
}

const SETTING_OPTIONS = ['--columns', '--rows', '--turn', '--press'] as const

function settingOf(args: readonly string[]): Answer {
  const { options, files } = optionsIn('setting', args, SETTING_OPTIONS, [])
  const [file, another] = files
  if (file === undefined) return refuse('setting', 'give the block file to read')
  if (another !== undefined) return refuse(shown(another), 'setting reads one file')
  const ask: SettingAsk = {
    columns: copies('--columns', options.get('--columns')),
    rows: copies('--rows', options.get('--rows')),
    turn: choice('--turn', options.get('--turn') ?? 'none', TURNINGS),
    press: choice('--press', options.get('--press') ?? 'same', PRESSINGS),
  }
  const said = settingReport(blockIn(file), ask)
  if (!said.ok) return refuse(`--${said.place}`, said.message)
  const errors = said.value.problems.some(({ code }) => ERRORS.has(code))
  return { status: errors ? 1 : 0, out: `${JSON.stringify(said.value, null, 2)}\n`, err: '' }
}

function sewnBeside(args: readonly string[]): Answer {
  const { files } = optionsIn('sewn', args, [], [])
  const [laidFile, sewnFile, another] = files
  if (laidFile === undefined || sewnFile === undefined) return refuse('sewn', 'give two block files: as it was laid, and as it came out')
  if (another !== undefined) return refuse(shown(another), 'sewn reads two files')
  if (laidFile === '-' && sewnFile === '-') return refuse('-', 'standard input is read once; give one of the two blocks as a file')
  const [laid, sewn] = [blockIn(laidFile), blockIn(sewnFile)]
  if (laid.grid.columns !== sewn.grid.columns || laid.grid.rows !== sewn.grid.rows)
    return refuse(
      'grid',
      `is ${sewn.grid.columns} by ${sewn.grid.rows} as sewn and ${laid.grid.columns} by ${laid.grid.rows} as laid; give the same block`,
    )
  const { differences, moves, proved } = asSewn(laid, sewn)
  const { problems, pressing } = report(sewn)
  const said = { format: 'nestwright.sewn', version: 1, differences, moves, proved, problems, clashes: pressing.clashes, proof: pressing.proof }
  return { status: problems.some(({ code }) => ERRORS.has(code)) ? 1 : 0, out: `${JSON.stringify(said, null, 2)}\n`, err: '' }
}

function copies(name: '--columns' | '--rows', given: string | undefined): number {
  if (given === undefined) return refuse(name, `say how many, such as ${name} 3`)
  const count = /^[0-9]{1,6}$/.test(given) ? Number(given) : 0
  return count >= 1 && count <= MOST_COPIES ? count : refuse(name, `${shown(given)} is not a whole number from 1 to ${MOST_COPIES}`)
}

function chartOptions(args: readonly string[]): { options: ReadonlyMap<ChartOption, string>; csv: boolean } {
  const { options, flags, files } = optionsIn('chart', args, CHART_OPTIONS, ['--csv'])
  const [file] = files
  if (file !== undefined) refuse(shown(file), 'chart reads no file')
  return { options, csv: flags.has('--csv') }
}

interface Given<Name extends string> {
  readonly options: ReadonlyMap<Name, string>
  readonly flags: ReadonlySet<string>
  readonly files: readonly string[]
}

function optionsIn<Name extends string>(command: string, args: readonly string[], names: readonly Name[], known: readonly string[]): Given<Name> {
  const options = new Map<Name, string>()
  const flags = new Set<string>()
  const files: string[] = []
  // `--seam 1/4` and `--seam=1/4` are the same.
  const words = args.flatMap((arg) => (/^--[a-z]+=/.test(arg) ? [arg.slice(0, arg.indexOf('=')), arg.slice(arg.indexOf('=') + 1)] : [arg]))
  for (let index = 0; index < words.length; index += 1) {
    const word = words[index] as string
    const option = names.find((name) => name === word)
    if (known.includes(word)) flags.add(word)
    else if (option !== undefined) {
      index += 1
      if (options.has(option)) refuse(option, 'is given twice')
      options.set(option, words[index] ?? refuse(option, 'needs a value'))
    } else if (word.startsWith('-') && word !== '-') refuse(shown(word), `${command} has no such option`)
    else files.push(word)
  }
  return { options, flags, files }
}

function choice<T extends string>(place: string, given: string, known: readonly T[]): T {
  return known.find((name) => name === given) ?? refuse(place, `${shown(given)} is unknown; choose ${known.join(', ')}`)
}

function positive(place: string, given: string): Rational {
  const length = parseRational(given)
  if (length === null) return refuse(place, `${shown(given)} is not a length; write 2.5 or "2 1/2"`)
  if (length.n <= 0n) return refuse(place, 'must be more than nothing')
  return length
}

/** What somebody typed, safe to show on one line. */
const shown = (typed: string): string => seenOnOneLine(typed).slice(0, 200) || '(nothing)'

async function safely(args: readonly string[]): Promise<Answer> {
  try {
    return await answer(args)
  } catch (error) {
    if (error instanceof Refusal) return { status: 2, out: '', err: `${seenOnOneLine(error.message)}\n` }
    // Status 1 would say that the layout is at fault: a mistake of ours must not.
    return { status: 2, out: '', err: `nestwright itself failed: ${seenOnOneLine(String(error))}\n` }
  }
}

// A reader that stops early (`nestwright report FILE | head`) is no mistake.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})
const { status, out, err } = await safely(process.argv.slice(2))
if (err !== '') process.stderr.write(err)
if (out !== '') process.stdout.write(out)
// Not exit(): a long report must reach its reader whole.
process.exitCode = status
