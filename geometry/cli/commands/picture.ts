/** `picture FILE OUT.svg`: a picture of the block, to scale. */
import { report, VIEWS, viewSvg } from '../../index.ts'
import { inputAndOutput, choiceOf, parseArguments } from '../arguments.ts'
import { readBlockFile } from '../readBlockFile.ts'
import { type Command, textResult } from '../result.ts'
import { writeOutput } from '../writeOutput.ts'

export const pictureCommand: Command = {
  name: 'picture',
  run: (args) => {
    const { options, files } = parseArguments('picture', args, ['--view'])
    const [input, output] = inputAndOutput('picture', files, '.svg')
    const view = choiceOf('--view', options.get('--view') ?? 'cloth', VIEWS)
    const block = readBlockFile(input)
    const value = report(block)
    writeOutput(output, new TextEncoder().encode(viewSvg(view, value, block)))
    return textResult('', value)
  },
}
