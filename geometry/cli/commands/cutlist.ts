/** `cutlist FILE [--csv]`: what to cut, for people or as a table. */
import {
  clothCsv,
  cutListCsv,
  cutListText,
  germanWords,
  quiltCutListText,
  quiltReport,
  quiltTable,
  report,
  type TableForm,
  unitsCsv,
} from '../../index.ts'
import { type Arguments, oneFile, choiceOf, parseArguments } from '../arguments.ts'
import { partAsked, quiltTextResult, readDocument } from '../readQuiltFile.ts'
import { type Command, refuse, textResult } from '../result.ts'

const TABLE_NAMES = ['pieces', 'units', 'cloth'] as const

export const cutlistCommand: Command = {
  name: 'cutlist',
  run: async (args) => {
    const given = parseArguments('cutlist', args, ['--of', '--part'], ['--csv', '--german', '--ids'])
    const document = readDocument(oneFile('cutlist', given.files))
    const table = await tableAsked(given)
    if (document.type === 'quilt') {
      const { quilt } = document
      const part = partAsked(given.options.get('--part'), quilt)
      const value = quiltReport(quilt)
      return quiltTextResult(table === null ? quiltCutListText(quilt, value, part) : quiltTable(quilt, value, table.of, table.form, part), value)
    }
    if (given.options.has('--part')) refuse('--part', 'is for a quilt file; a block has no parts')
    const { block } = document
    const value = report(block)
    return textResult(table === null ? cutListText(value, block) : TABLES[table.of](value, block, table.form), value)
  },
}

const TABLES = { pieces: cutListCsv, units: unitsCsv, cloth: clothCsv } as const

/** The table that the options ask for; null for text. */
async function tableAsked({ flags, options }: Arguments<'--of' | '--part'>): Promise<{ of: (typeof TABLE_NAMES)[number]; form: TableForm } | null> {
  if (!flags.has('--csv')) {
    const [only] = ['--of', '--german', '--ids'].filter((one) => flags.has(one) || options.has(one as '--of'))
    return only === undefined ? null : refuse(only, 'is for the table that --csv prints; give --csv too')
  }
  const form = { ids: flags.has('--ids'), ...(flags.has('--german') ? { german: await germanWords() } : {}) }
  return { of: choiceOf('--of', options.get('--of') ?? 'pieces', TABLE_NAMES), form }
}
