/** `sewn FILE SEWN`: what a sewn block differs in from the one laid out, as JSON. */
import { asSewn, report } from '../../index.ts'
import { parseArguments } from '../arguments.ts'
import { readBlockFile } from '../readBlockFile.ts'
import { type Command, jsonResult, printable, refuse } from '../result.ts'

export const sewnCommand: Command = {
  name: 'sewn',
  run: (args) => {
    const [laidFile, sewnFile] = twoFiles(parseArguments('sewn', args, []).files)
    const [laid, sewn] = [readBlockFile(laidFile), readBlockFile(sewnFile)]
    if (laid.grid.columns !== sewn.grid.columns || laid.grid.rows !== sewn.grid.rows)
      return refuse(
        'grid',
        `is ${sewn.grid.columns} by ${sewn.grid.rows} as sewn and ${laid.grid.columns} by ${laid.grid.rows} as laid; give the same block`,
      )
    const { differences, moves, proved } = asSewn(laid, sewn)
    const { problems, pressing } = report(sewn)
    const { clashes, proof } = pressing
    return jsonResult({ format: 'nestwright.sewn', version: 1, differences, moves, proved, problems, clashes, proof }, problems)
  },
}

function twoFiles([laid, sewn, another]: readonly string[]): [laid: string, sewn: string] {
  if (laid === undefined || sewn === undefined) return refuse('sewn', 'give two block files: as it was laid, and as it came out')
  if (another !== undefined) return refuse(printable(another), 'sewn reads two files')
  if (laid === '-' && sewn === '-') return refuse('-', 'standard input is read once; give one of the two blocks as a file')
  return [laid, sewn]
}
