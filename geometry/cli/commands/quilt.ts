/** `quilt FILE`: the report of a quilt file, as JSON. */
import { isError, printed, type Quilt, quiltReport } from '../../index.ts'
import { oneFile, parseArguments } from '../arguments.ts'
import { readQuiltFile } from '../readQuiltFile.ts'
import type { Command, CommandResult } from '../result.ts'

export const quiltCommand: Command = {
  name: 'quilt',
  run: (args) => quiltResult(readQuiltFile(oneFile('quilt', parseArguments('quilt', args, []).files))),
}

/** The report of a quilt as JSON; exit status 1 where its problems keep it from being sewn. */
export function quiltResult(quilt: Quilt): CommandResult {
  const report = quiltReport(quilt)
  return { exitStatus: report.problems.some(isError) ? 1 : 0, stdout: `${JSON.stringify(report, printed, 2)}\n`, stderr: '' }
}
