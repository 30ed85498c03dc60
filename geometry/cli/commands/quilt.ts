/** `quilt FILE`: the report of a quilt file, as JSON. */
import { inEnglish, isError, printed, quiltReport, readQuilt } from '../../index.ts'
import { oneFile, parseArguments } from '../arguments.ts'
import { textOf } from '../readBlockFile.ts'
import { type Command, printable, refuse } from '../result.ts'

export const quiltCommand: Command = {
  name: 'quilt',
  run: (args) => {
    const { files } = parseArguments('quilt', args, [])
    const file = oneFile('quilt', files)
    const read = readQuilt(textOf(file))
    if (!read.ok) return refuse(read.place === 'file' ? printable(file) : read.place, inEnglish(read.message))
    const report = quiltReport(read.value)
    return { exitStatus: report.problems.some(isError) ? 1 : 0, stdout: `${JSON.stringify(report, printed, 2)}\n`, stderr: '' }
  },
}
