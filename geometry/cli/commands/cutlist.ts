/** `cutlist FILE [--csv]`: what to cut, for people or as a table. */
import { type Block, clothCsv, cutListCsv, cutListText, type Report, report, unitsCsv } from '../../index.ts'
import { type Arguments, oneFile, choiceOf, parseArguments } from '../arguments.ts'
import { readBlockFile } from '../readBlockFile.ts'
import { type Command, refuse, textResult } from '../result.ts'

const TABLES = { pieces: cutListCsv, units: unitsCsv, cloth: clothCsv } as const
const TABLE_NAMES = ['pieces', 'units', 'cloth'] as const

export const cutlistCommand: Command = {
  name: 'cutlist',
  run: (args) => {
    const given = parseArguments('cutlist', args, ['--of'], ['--csv'])
    const block = readBlockFile(oneFile('cutlist', given.files))
    const value = report(block)
    return textResult(cutList(value, block, given), value)
  },
}

function cutList(of: Report, block: Block, { flags, options }: Arguments<'--of'>): string {
  const table = options.get('--of')
  if (!flags.has('--csv')) return table === undefined ? cutListText(of, block) : refuse('--of', 'says which table --csv prints; give --csv too')
  return TABLES[choiceOf('--of', table ?? 'pieces', TABLE_NAMES)](of, block)
}
