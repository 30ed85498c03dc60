/** `setting FILE --columns N --rows N`: copies of a block set edge to edge, as JSON. */
import { inEnglish, MOST_COPIES, PRESSINGS, settingReport, TURNINGS } from '../../index.ts'
import { oneFile, choiceOf, parseArguments } from '../arguments.ts'
import { readBlockFile } from '../readBlockFile.ts'
import { type Command, jsonResult, printable, refuse } from '../result.ts'

const OPTIONS = ['--columns', '--rows', '--turn', '--press'] as const

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
    const setting = settingReport(readBlockFile(file), request)
    return setting.ok ? jsonResult(setting.value, setting.value.problems) : refuse(`--${setting.place}`, inEnglish(setting.message))
  },
}

function copies(option: '--columns' | '--rows', given: string | undefined): number {
  if (given === undefined) return refuse(option, `say how many, such as ${option} 3`)
  const count = /^[0-9]{1,6}$/.test(given) ? Number(given) : 0
  return count >= 1 && count <= MOST_COPIES ? count : refuse(option, `${printable(given)} is not a whole number from 1 to ${MOST_COPIES}`)
}
