/** What to cut and buy for the whole quilt: each fabric with its pieces, batting, backing, binding. */
import '../../sheets/cutting/cutting.css'
import type { Fabric, Quilt, QuiltReport } from '../../../geometry/index.ts'
import { CUT_AGAIN, shapeWords } from '../../sheets/cutting/FabricCuts.tsx'
import { sayBought, sayOneSize, saySides } from '../../words/sizes.ts'
import { t, tn } from '../../words/words.ts'
import { useQuiltReport } from '../useQuiltReport.ts'

export function CuttingSheet({ quilt }: { readonly quilt: Quilt }) {
  const { report, working } = useQuiltReport()
  if (report === null) return <p className="hint">{t('Working…')}</p>
  const { unit } = report.measure
  return (
    <div className={working ? 'stale' : ''}>
      <section aria-labelledby="quilt-cut-title" className="cutsheet">
        <h2 id="quilt-cut-title">{t('Cut list of the quilt')}</h2>
        {fabricsCut(quilt, report).map((fabric) => (
          <FabricPieces key={fabric.id} fabric={fabric} report={report} />
        ))}
        <p className="caution">{t('Close the rotary cutter’s blade after every cut, and keep your fingers off the ruler’s edge.')}</p>
      </section>
      <section aria-labelledby="quilt-layers-title">
        <h2 id="quilt-layers-title">{t('Batting, backing, binding')}</h2>
        <ul>
          {report.layers.map(({ what, size, count }) => (
            <li key={`${what} ${size.join()}`}>
              {count} × {what === 'batting' ? t('batting') : t('backing')} {saySides(size, unit)}
            </li>
          ))}
        </ul>
        <p>
          {report.binding === null
            ? t('No binding: the backing’s rim is the edge.')
            : t('Binding: {strips} strips {width} wide, {length} in all.', {
                strips: report.binding.strips,
                width: sayOneSize(report.binding.width, unit),
                length: sayOneSize(report.binding.length, unit),
              })}
        </p>
      </section>
    </div>
  )
}

type CutRow = QuiltReport['cut'][number]

/** The quilt's fabrics that are cut, and blocks' own after them. */
function fabricsCut(quilt: Quilt, report: QuiltReport): Fabric[] {
  const cut = new Set(report.cut.map(({ fabric }) => fabric))
  const own = quilt.blocks.flatMap(({ id, block }) => block.fabrics.map((fabric) => ({ ...fabric, id: `${id}/${fabric.id}` })))
  return [...quilt.fabrics, ...own].filter(({ id }) => cut.has(id))
}

const PARTS: Readonly<Record<CutRow['part'], () => string>> = {
  block: () => t('blocks'),
  frame: () => t('frames'),
  plain: () => t('plain pieces'),
  sash: () => t('sashing'),
  strip: () => t('joining strips'),
  border: () => t('borders'),
}

function FabricPieces({ fabric, report }: { readonly fabric: Fabric; readonly report: QuiltReport }) {
  const { unit } = report.measure
  const rows = report.cut.filter((row) => row.fabric === fabric.id)
  const yardage = report.fabric.find((row) => row.fabric === fabric.id)
  return (
    <div className="cloth">
      <h3>
        <span className="dot" style={{ background: fabric.colour }} aria-hidden="true" />
        {fabric.name}
        {yardage !== undefined && <small> {t('buy {length}', { length: sayBought(yardage.buy, unit) })}</small>}
      </h3>
      {Object.entries(PARTS).map(([part, name]) => {
        const own = gathered(rows.filter((row) => row.part === part))
        if (own.length === 0) return null
        return (
          <div key={part} className="cut-part">
            <h4>{name()}</h4>
            <ul>
              {own.map((row) => (
                <li key={`${row.size.join()} ${row.then} ${row.pieced ?? ''} ${row.shape}`}>
                  {pieceWords(row)} {saySides(row.size, unit)}
                  {CUT_AGAIN[row.then]()}
                  {row.pieced !== undefined && <small>{tn(row.pieced, ', each from one strip', ', each sewn from {n} strips')}</small>}
                </li>
              ))}
            </ul>
          </div>
        )
      })}
    </div>
  )
}

/** Framing, joining and border strips are called strips, whatever their shape. */
const pieceWords = (row: CutRow): string =>
  row.part === 'block' || row.part === 'plain' || row.shape === 'square' ? shapeWords(row) : tn(row.count, 'one strip', '{n} strips')

/** Equal pieces as one, the largest first. */
function gathered(rows: readonly CutRow[]): CutRow[] {
  const kinds = new Map<string, CutRow>()
  for (const row of rows) {
    const size = [Math.min(...row.size), Math.max(...row.size)] as const
    const key = `${size.join()} ${row.then} ${row.pieced ?? ''} ${row.shape}`
    kinds.set(key, { ...row, size, count: row.count + (kinds.get(key)?.count ?? 0) })
  }
  return [...kinds.values()].sort((a, b) => b.size[0] * b.size[1] - a.size[0] * a.size[1])
}
