/** `sewn FILE SEWN [--text]`: how a sewn block differs from its plan, as JSON or in sentences. */
import { asSewn, type Findings, inEnglish, report, sanitiseLines } from '../../index.ts'
import { parseArguments } from '../arguments.ts'
import { readBlockFile } from '../readBlockFile.ts'
import { type Command, jsonResult, printable, refuse, textResult } from '../result.ts'

export const sewnCommand: Command = {
  name: 'sewn',
  run: (args) => {
    const { flags, files } = parseArguments('sewn', args, [], ['--text'])
    const [laidFile, sewnFile] = twoFiles(files)
    const [laid, sewn] = [readBlockFile(laidFile), readBlockFile(sewnFile)]
    if (laid.grid.columns !== sewn.grid.columns || laid.grid.rows !== sewn.grid.rows)
      return refuse(
        'grid',
        `is ${sewn.grid.columns} by ${sewn.grid.rows} as sewn and ${laid.grid.columns} by ${laid.grid.rows} as laid; give the same block`,
      )
    const comparison = asSewn(laid, sewn)
    const value = report(sewn)
    if (flags.has('--text')) return textResult(sewnText(comparison, value), value)
    const { differences, moves, proved } = comparison
    const { problems, pressing } = value
    const { clashes, proof } = pressing
    return jsonResult({ format: 'nestwright.sewn', version: 1, differences, moves, proved, problems, clashes, proof }, problems)
  },
}

/** For people: what is different, the changes that fix it, and how many seam crossings of the sewn block don't nest. */
function sewnText({ differences, moves, proved }: ReturnType<typeof asSewn>, { meetings, pressing }: Findings): string {
  const [places, changes, apart] = [differences.length, moves.length, pressing.clashes]
  const fewest = proved || changes === 1 ? '' : ' (the fewest found)'
  const found =
    changes === 0
      ? ['The sewn block matches the plan.']
      : [
          ...(places === 0 ? [] : [places === 1 ? 'One unit is different:' : `${places} units are different:`]),
          ...differences.map(({ message }) => `  ${inEnglish(message)}`),
          '',
          changes === 1 ? 'One change fixes it:' : `${changes} changes fix it${fewest}:`,
          ...moves.map(({ message }, index) => `  ${index + 1}. ${inEnglish(message)}`),
        ]
  const all = meetings.length
  const nesting =
    all === 0 ? [] : ['', apart === 0 ? `As sewn, all ${all} seam crossings nest.` : `As sewn, ${apart} of ${all} seam crossings don’t nest.`]
  return sanitiseLines(`${[...found, ...nesting].join('\n')}\n`)
}

function twoFiles([laid, sewn, another]: readonly string[]): [laid: string, sewn: string] {
  if (laid === undefined || sewn === undefined) return refuse('sewn', 'give two block files: the plan, then the block as sewn')
  if (another !== undefined) return refuse(printable(another), 'sewn reads two files')
  if (laid === '-' && sewn === '-') return refuse('-', 'standard input is read once; give one of the two blocks as a file')
  return [laid, sewn]
}
