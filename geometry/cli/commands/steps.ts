/** `steps FILE`: the numbered making steps. */
import { bookletOf, report, stepsText } from '../../index.ts'
import { oneFile, parseArguments } from '../arguments.ts'
import { readBlockFile } from '../readBlockFile.ts'
import { type Command, textResult } from '../result.ts'

export const stepsCommand: Command = {
  name: 'steps',
  run: (args) => {
    const { files } = parseArguments('steps', args, [])
    const block = readBlockFile(oneFile('steps', files))
    const value = report(block)
    return textResult(stepsText(bookletOf(value, block)), value)
  },
}
