/** What the command says about how to use it: everything at once, or one command with its options. */
import { BOOKLET_LANGUAGES, CHART_KINDS, EDITIONS, PAPERS, PRESSINGS, SINGLE_PAGES, TURNINGS, VIEWS } from '../index.ts'

interface CommandHelp {
  /** What follows the command's name. */
  readonly use: string
  readonly does: string
  readonly options: readonly (readonly [option: string, does: string])[]
}

const LANGUAGE = `--language ${BOOKLET_LANGUAGES.join('|')}`

const HELP = {
  report: { use: 'FILE', does: 'everything Nestwright works out about the block, as JSON', options: [] },
  quilt: { use: 'FILE', does: 'everything Nestwright works out about a whole quilt, as JSON', options: [] },
  cutlist: {
    use: 'FILE',
    does: 'what to cut',
    options: [
      ['--csv', 'as a table for a spreadsheet'],
      ['--of pieces|units|cloth', 'which table: the pieces, the units to make, or the fabric to buy'],
      ['--german', 'the table as German spreadsheets read it: semicolons, decimal commas'],
      ['--ids', 'the table with the ids of the block file'],
      ['--part 2', 'of a quilt: what one part of a class needs'],
    ],
  },
  steps: {
    use: 'FILE',
    does: 'the numbered steps of a block or a quilt',
    options: [
      [LANGUAGE, 'of a block: English, unless you say otherwise'],
      ['--part 2', 'of a quilt: one part of a class'],
    ],
  },
  chart: {
    use: '',
    does: 'a size chart',
    options: [
      [`--kind ${CHART_KINDS.join('|')}`, 'geese, unless you say otherwise'],
      ['--unit in|cm', 'inches, unless you say otherwise'],
      ['--seam 1/4', 'the seam allowance'],
      ['--from 1 --to 12 --step 1/2', 'the finished sizes'],
      ['--larger 1/8', 'cut the squares this much larger, then trim'],
      ['--csv', 'as a table for a spreadsheet'],
    ],
  },
  setting: {
    use: 'FILE',
    does: 'a quilt of copies of the block, and its report as JSON',
    options: [
      ['--columns 3 --rows 2', 'how many'],
      ['--out QUILT.json', 'write the quilt file here'],
      [`--turn ${TURNINGS.join('|')}`, 'turn none, turn every other one, or turn them so that most seams nest'],
      [`--press ${PRESSINGS.join('|')}`, 'press all the same, every other one the opposite way, or so that most seams nest'],
    ],
  },
  sewn: {
    use: 'FILE SEWN',
    does: 'how a sewn block differs from its plan, and the fewest changes that fix it, as JSON',
    options: [['--text', 'in sentences, not as JSON']],
  },
  booklet: {
    use: 'FILE OUT.pdf',
    does: 'the booklet, as the app saves it',
    options: [
      [`--paper ${PAPERS.join('|')}`, 'Letter for inches and A4 for centimetres, unless you say otherwise'],
      [`--edition ${EDITIONS.join('|')}`, 'the few pages to sew from, unless you say otherwise; or everything, to the quilting and binding'],
      [LANGUAGE, 'English, unless you say otherwise'],
      ['--blocks 1', 'how many blocks it makes'],
      ['--title TITLE --by NAME', 'its title, and who it is by'],
      [`--only ${SINGLE_PAGES.join('|')}`, 'only these pages'],
    ],
  },
  picture: {
    use: 'FILE OUT.svg',
    does: 'a picture of the block, to scale',
    options: [[`--view ${VIEWS.join('|')}`, 'cloth (the fabrics), unless you say otherwise']],
  },
} as const satisfies Readonly<Record<string, CommandHelp>>

export type CommandName = keyof typeof HELP

const FILES = `FILE is a block file, or a booklet: the block inside it is read. quilt reads a quilt file; cutlist, steps, picture and booklet
read either. - reads standard input.
`

const STATUS = `Exit status: 0, done; 1, the block has an error that must be fixed before it can be sewn (the output is printed all the same);
2, the file or the arguments could not be used, and one line on standard error says where.
`

/** What `nestwright --help` prints: every command with what it does. */
export const USAGE = `Usage: nestwright COMMAND

${Object.entries<CommandHelp>(HELP)
  .map(([name, { use, does }]) => `  ${`${name} ${use}`.padEnd(22)}${does}`)
  .join('\n')}

  help COMMAND          the options of a command
  --version             which version this is

${FILES}
${STATUS}`

/** What `nestwright help COMMAND` prints. */
export function commandUsage(name: CommandName): string {
  const { use, does, options }: CommandHelp = HELP[name]
  const words = [`nestwright ${name}`, use, options.length === 0 ? '' : '[options]'].filter((word) => word !== '').join(' ')
  const lines = options.map(([option, what]) => `  ${option}\n      ${what}\n`)
  return `Usage: ${words}\n\n${does.charAt(0).toUpperCase()}${does.slice(1)}.\n${lines.length === 0 ? '' : `\n${lines.join('')}`}\n${use.includes('FILE ') || use.endsWith('FILE') ? `${FILES}\n` : ''}${STATUS}`
}
