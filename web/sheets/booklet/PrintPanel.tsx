/** What leaves the page for paper: the booklet, single pages, pictures to scale, tables. */
import { useEffect, useRef, useState } from 'react'
import {
  type Block,
  clothCsv,
  cutListCsv,
  PAPER_NAMES,
  PAPERS,
  type Paper,
  layersSvg,
  quiltingRoute,
  SINGLE_PAGES,
  type SinglePage,
  unitsCsv,
  usualPaper,
  VIEWS,
  type View,
  viewSvg,
} from '../../../geometry/index.ts'
import { layerColour } from '../../drawing/layerColours.ts'
import { download, fileName } from '../../keeping/download.ts'
import { setView, useStore, useFindings } from '../../document/store.ts'
import { said, t } from '../../words/words.ts'
import { svgToPng } from './svgToPng.ts'
import { type Printing, startPrinting } from '../../workers/printClient.ts'
import './printPanel.css'

const SINGLE: Readonly<Record<SinglePage, string>> = {
  cutlist: said('Cut list'),
  chart: said('Size chart'),
  colouring: said('Colouring page'),
  templates: said('Templates'),
}

type Pictured = View | 'layers'

const VIEW_NAMES: Readonly<Record<Pictured, string>> = {
  cloth: said('in cloth'),
  value: said('in greys'),
  outline: said('in outlines'),
  wrong: said('from the wrong side'),
  seams: said('with its seams numbered'),
  quilting: said('with its quilting line'),
  layers: said('with its layers of cloth'),
}

const KEPT = 'nestwright.paper'

export function PrintPanel() {
  const block = useStore(({ history }) => history.block)
  const [paper, setPaper] = useState<Paper>(() => paperKept() ?? usualPaper(block))
  const printing = usePrinting()
  const choose = (chosen: Paper): void => {
    setPaper(chosen)
    keepPaper(chosen)
  }
  const busy = printing.busy !== null
  // A button that is out of use keeps the focus, so that no keyboard loses its place.
  const print = (only: SinglePage | null): void => {
    if (!busy) void printing.start(block, paper, only)
  }
  const main = useRef<HTMLButtonElement>(null)
  const cancel = (): void => {
    printing.cancel()
    main.current?.focus()
  }
  return (
    <section aria-labelledby="prints-title" className="prints">
      <h2 id="prints-title">{t('Print')}</h2>
      <fieldset>
        <legend>{t('Paper')}</legend>
        {PAPERS.map((one) => (
          <label key={one} className="choice">
            <input type="radio" name="paper" checked={one === paper} onChange={() => choose(one)} />
            {PAPER_NAMES[one]}
          </label>
        ))}
      </fieldset>
      <div className="buttons">
        <button ref={main} type="button" className="main" aria-disabled={busy} onClick={() => print(null)}>
          {t('Print the booklet')}
        </button>
      </div>
      <p className="hint">{t('A PDF with the block file inside: open it here again like any block file. Print it at 100 %, “actual size”.')}</p>
      {printing.busy !== null && (
        <div className="progress">
          <label>
            {t('The pages are being made…')}
            <progress value={printing.busy.done} max={printing.busy.of} />
          </label>
          <button type="button" onClick={cancel}>
            {t('Cancel')}
          </button>
        </div>
      )}
      <h3>{t('Single pages')}</h3>
      <div className="buttons">
        {SINGLE_PAGES.map((one) => (
          <button key={one} type="button" aria-disabled={busy} onClick={() => print(one)}>
            {t(SINGLE[one])}
          </button>
        ))}
      </div>
      <Pictures block={block} />
      <Tables block={block} />
    </section>
  )
}

function paperKept(): Paper | null {
  try {
    return PAPERS.find((paper) => paper === localStorage.getItem(KEPT)) ?? null
  } catch {
    return null
  }
}

function keepPaper(paper: Paper): void {
  try {
    localStorage.setItem(KEPT, paper)
  } catch {
    // A private window keeps nothing: the paper is chosen anew next time.
  }
}

interface Busy {
  readonly done: number
  readonly of: number
}

function usePrinting(): {
  readonly busy: Busy | null
  readonly start: (block: Block, paper: Paper, only: SinglePage | null) => Promise<void>
  readonly cancel: () => void
} {
  const [busy, setBusy] = useState<Busy | null>(null)
  const now = useRef<Printing | null>(null)
  useEffect(() => () => now.current?.cancel(), [])
  const start = async (block: Block, paper: Paper, only: SinglePage | null): Promise<void> => {
    setBusy({ done: 0, of: 1 })
    const printing = startPrinting({ block, paper, only }, (done, of) => setBusy({ done, of }))
    now.current = printing
    try {
      const bytes = await printing.bytes
      if (bytes === null) {
        setView({ notice: t('Printing was taken back; nothing was saved.') })
        return
      }
      download(`${fileName(block.name)}-${only ?? 'booklet'}.pdf`, bytes, 'application/pdf')
      setView({ notice: t('The pages are saved as a PDF.') })
    } catch (error) {
      setView({
        notice: t('The pages could not be made ({why}); nothing was saved.', { why: error instanceof Error ? error.message : String(error) }),
      })
    } finally {
      setBusy(null)
    }
  }
  return { busy, start, cancel: () => now.current?.cancel() }
}

function Pictures({ block }: { readonly block: Block }) {
  const [chosen, setChosen] = useState<Pictured>('cloth')
  const { report } = useFindings()
  const deep = useStore((state) => state.layers)
  if (report === null) return null
  // Layers are counted beside the page: until then there is nothing to draw.
  const views: readonly Pictured[] = deep?.block === block && deep.layered.cells.length > 0 ? [...VIEWS, 'layers'] : VIEWS
  const view = views.includes(chosen) ? chosen : 'cloth'
  const name = `${fileName(block.name)}-${view}`
  const svg = (): string => {
    if (view === 'layers') return layersSvg(deep?.layered.cells ?? [], report, block, layerColour)
    return viewSvg(view, view === 'quilting' ? { ...report, ditch: quiltingRoute(block) } : report, block)
  }
  const savePng = async (): Promise<void> => {
    try {
      download(`${name}.png`, await svgToPng(svg()), 'image/png')
    } catch {
      setView({ notice: t('This browser could not paint the picture; save it as SVG instead.') })
    }
  }
  return (
    <>
      <h3>{t('A picture to scale')}</h3>
      <label className="view">
        {t('The block')}
        <select value={view} onChange={(event) => setChosen(event.target.value as Pictured)}>
          {views.map((one) => (
            <option key={one} value={one}>
              {t(VIEW_NAMES[one])}
            </option>
          ))}
        </select>
      </label>
      <div className="buttons">
        <button type="button" onClick={() => download(`${name}.svg`, svg(), 'image/svg+xml')}>
          {t('Save as SVG')}
        </button>
        <button type="button" onClick={() => void savePng()}>
          {t('Save as PNG')}
        </button>
      </div>
    </>
  )
}

const TABLES = {
  pieces: { name: said('Cut pieces'), made: cutListCsv },
  units: { name: said('Units'), made: unitsCsv },
  cloth: { name: said('Cloth to buy'), made: clothCsv },
} as const

function Tables({ block }: { readonly block: Block }) {
  const { report } = useFindings()
  if (report === null) return null
  return (
    <>
      <h3>{t('Tables as CSV')}</h3>
      <div className="buttons">
        {Object.entries(TABLES).map(([table, { name, made }]) => (
          <button key={table} type="button" onClick={() => download(`${fileName(block.name)}-${table}.csv`, made(report, block), 'text/csv')}>
            {t(name)}
          </button>
        ))}
      </div>
    </>
  )
}
