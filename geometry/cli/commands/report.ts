/** `report FILE`: the report of a block file, as JSON. */
import { report } from '../../index.ts'
import { oneFile, parseArguments } from '../arguments.ts'
import { readBlockFile } from '../readBlockFile.ts'
import { type Command, jsonResult } from '../result.ts'

/** Patches above which a report is printed on one line: nobody reads it line by line, and it is half as long. */
const MOST_INDENTED = 5_000

export const reportCommand: Command = {
  name: 'report',
  run: (args) => {
    const { files } = parseArguments('report', args, [])
    const value = report(readBlockFile(oneFile('report', files)))
    return jsonResult(value, value.problems, value.patches.length > MOST_INDENTED ? 0 : 2)
  },
}
