/** `steps FILE`: the numbered making steps of a block, or of a quilt. */
import { BOOKLET_LANGUAGES, bookletOf, quiltBooklet, quiltReport, quiltStepsText, report, stepsText } from '../../index.ts'
import { choiceOf, oneFile, parseArguments } from '../arguments.ts'
import { partAsked, quiltTextResult, readDocument } from '../readQuiltFile.ts'
import { type Command, refuse, textResult } from '../result.ts'

export const stepsCommand: Command = {
  name: 'steps',
  run: (args) => {
    const { files, options } = parseArguments('steps', args, ['--part', '--language'])
    const document = readDocument(oneFile('steps', files))
    if (document.type === 'quilt') {
      const { quilt } = document
      const part = partAsked(options.get('--part'), quilt)
      const value = quiltReport(quilt)
      return quiltTextResult(quiltStepsText(quiltBooklet(quilt, value, part)), value)
    }
    if (options.has('--part')) refuse('--part', 'is for a quilt file; a block has no parts')
    const language = choiceOf('--language', options.get('--language') ?? 'en', BOOKLET_LANGUAGES)
    const value = report(document.block)
    return textResult(stepsText(bookletOf(value, document.block, language)), value)
  },
}
