/** The report's tables as CSV files. */
import { type Block, clothCsv, cutListCsv, unitsCsv } from '../../../geometry/index.ts'
import { useFindings } from '../../document/store.ts'
import { download, fileName } from '../../keeping/download.ts'
import { label, t } from '../../words/words.ts'

const TABLES = {
  pieces: { name: label('Save cut list as CSV'), csv: cutListCsv },
  units: { name: label('Save list of units as CSV'), csv: unitsCsv },
  cloth: { name: label('Save shopping list as CSV'), csv: clothCsv },
} as const

export function TableExport({ block }: { readonly block: Block }) {
  const { report } = useFindings()
  if (report === null) return null
  return (
    <>
      <h3>{t('Tables for a spreadsheet')}</h3>
      <div className="buttons">
        {Object.entries(TABLES).map(([table, { name, csv }]) => (
          <button key={table} type="button" onClick={() => download(`${fileName(block.name)}-${table}.csv`, csv(report, block), 'text/csv')}>
            {t(name)}
          </button>
        ))}
      </div>
    </>
  )
}
