/** `setting FILE --columns N --rows N`: a quilt of copies of a block, edge to edge; its file, and its report as JSON. */
import { inEnglish, MOST_COPIES, PRESSINGS, quiltOfCopies, TURNINGS, writeQuilt } from '../../index.ts'
import { oneFile, choiceOf, parseArguments } from '../arguments.ts'
import { readBlockFile } from '../readBlockFile.ts'
import { type Command, printable, refuse } from '../result.ts'
import { writeOutput } from '../writeOutput.ts'
import { quiltResult } from './quilt.ts'

const OPTIONS = ['--columns', '--rows', '--turn', '--press', '--out'] as const

export const settingCommand: Command = {
  name: 'setting',
  run: (args) => {
    const { options, files } = parseArguments('setting', args, OPTIONS)
    const file = oneFile('setting', files)
    const request = {
      columns: copies('--columns', options.get('--columns')),
      rows: copies('--rows', options.get('--rows')),
      turn: choiceOf('--turn', options.get('--turn') ?? 'none', TURNINGS),
      press: choiceOf('--press', options.get('--press') ?? 'same', PRESSINGS),
    }
    const quilt = quiltOfCopies(readBlockFile(file), request)
    if (!quilt.ok) return refuse(`--${quilt.place}`, inEnglish(quilt.message))
    const result = quiltResult(quilt.value)
    const out = options.get('--out')
    if (out !== undefined) writeOutput(out, new TextEncoder().encode(writeQuilt(quilt.value)))
    return result
  },
}

function copies(option: '--columns' | '--rows', given: string | undefined): number {
  if (given === undefined) return refuse(option, `say how many, such as ${option} 3`)
  const count = /^[0-9]{1,6}$/.test(given) ? Number(given) : 0
  return count >= 1 && count <= MOST_COPIES ? count : refuse(option, `${printable(given)} is not a whole number from 1 to ${MOST_COPIES}`)
}
