/** `picture FILE OUT.svg`: a picture of the block or the quilt, to scale. */
import { QUILT_VIEWS, quiltReport, quiltSvg, report, VIEWS, viewSvg } from '../../index.ts'
import { inputAndOutput, choiceOf, parseArguments } from '../arguments.ts'
import { quiltTextResult, readDocument } from '../readQuiltFile.ts'
import { type Command, textResult } from '../result.ts'
import { writeOutput } from '../writeOutput.ts'

export const pictureCommand: Command = {
  name: 'picture',
  run: (args) => {
    const { options, files } = parseArguments('picture', args, ['--view'])
    const [input, output] = inputAndOutput('picture', files, '.svg')
    const asked = options.get('--view') ?? 'cloth'
    const document = readDocument(input)
    if (document.type === 'quilt') {
      const view = choiceOf('--view', asked, QUILT_VIEWS)
      const value = quiltReport(document.quilt)
      writeOutput(output, new TextEncoder().encode(quiltSvg(view, document.quilt, value)))
      return quiltTextResult('', value)
    }
    const view = choiceOf('--view', asked, VIEWS)
    const value = report(document.block)
    writeOutput(output, new TextEncoder().encode(viewSvg(view, value, document.block)))
    return textResult('', value)
  },
}
