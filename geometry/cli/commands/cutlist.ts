/** `cutlist FILE [--csv]`: what to cut, for people or as a table. */
import { type Block, clothCsv, cutListCsv, cutListText, germanWords, type Report, report, unitsCsv } from '../../index.ts'
import { type Arguments, oneFile, choiceOf, parseArguments } from '../arguments.ts'
import { readBlockFile } from '../readBlockFile.ts'
import { type Command, refuse, textResult } from '../result.ts'

const TABLE_NAMES = ['pieces', 'units', 'cloth'] as const

export const cutlistCommand: Command = {
  name: 'cutlist',
  run: async (args) => {
    const given = parseArguments('cutlist', args, ['--of'], ['--csv', '--german', '--ids'])
    const block = readBlockFile(oneFile('cutlist', given.files))
    const value = report(block)
    return textResult(await cutList(value, block, given), value)
  },
}

async function cutList(of: Report, block: Block, { flags, options }: Arguments<'--of'>): Promise<string> {
  const table = options.get('--of')
  if (!flags.has('--csv')) {
    const [only] = ['--of', '--german', '--ids'].filter((one) => flags.has(one) || options.has(one as '--of'))
    return only === undefined ? cutListText(of, block) : refuse(only, 'is for the table that --csv prints; give --csv too')
  }
  const form = { ids: flags.has('--ids'), ...(flags.has('--german') ? { german: await germanWords() } : {}) }
  const asked = choiceOf('--of', table ?? 'pieces', TABLE_NAMES)
  return { pieces: cutListCsv, units: unitsCsv, cloth: clothCsv }[asked](of, block, form)
}
