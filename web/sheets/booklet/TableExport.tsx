/** The report's tables as CSV files. */
import { type Block, clothCsv, cutListCsv, unitsCsv } from '../../../geometry/index.ts'
import { useFindings } from '../../document/store.ts'
import { fileName, saveAndSay } from '../../keeping/download.ts'
import { label, t, tableForm } from '../../words/words.ts'

const TABLES = {
  pieces: { name: label('Cut list'), button: label('Save cut list as CSV'), csv: cutListCsv },
  units: { name: label('List of units'), button: label('Save list of units as CSV'), csv: unitsCsv },
  cloth: { name: label('Shopping list'), button: label('Save shopping list as CSV'), csv: clothCsv },
} as const

export function TableExport({ block }: { readonly block: Block }) {
  const { report } = useFindings()
  if (report === null) return null
  return (
    <>
      <h3>{t('Tables for a spreadsheet')}</h3>
      <div className="buttons">
        {Object.entries(TABLES).map(([table, { name, button, csv }]) => (
          <button
            key={table}
            type="button"
            onClick={() => saveAndSay(t(name), `${fileName(block.name)}-${table}.csv`, csv(report, block, tableForm()), 'text/csv')}
          >
            {t(button)}
          </button>
        ))}
      </div>
    </>
  )
}
