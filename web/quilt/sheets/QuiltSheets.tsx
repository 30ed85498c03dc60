/** The right side of the quilt's page: a row of tabs, and the open sheet. The summary of the seam check stands above every sheet. */
import { type ComponentType, type KeyboardEvent, lazy, type ReactElement } from 'react'
import type { Quilt } from '../../../geometry/index.ts'
import { LazyPanel } from '../../controls/LazyPanel.tsx'
import { useMedia } from '../../controls/useMedia.ts'
import { SheetEdge } from '../../sheets/SheetEdge.tsx'
import { t } from '../../words/words.ts'
import { type QuiltSheet, setQuiltView, useQuiltView } from '../quiltView.ts'
import { PlaceSheet } from './PlaceSheet.tsx'
import { QuiltSummary } from './QuiltSummary.tsx'

interface PanelProps {
  readonly quilt: Quilt
}

const JoiningSheet = lazy(async () => ({ default: (await import('./JoiningSheet.tsx')).JoiningSheet }))
const SeamSheet = lazy(async () => ({ default: (await import('./SeamSheet.tsx')).SeamSheet }))
const QuiltBookletSheet = lazy(async () => ({ default: (await import('./QuiltBookletSheet.tsx')).QuiltBookletSheet }))
const CuttingSheet = lazy(async () => ({ default: (await import('./CuttingSheet.tsx')).CuttingSheet }))

const SHEETS: readonly {
  readonly sheet: QuiltSheet
  readonly name: () => string
  readonly icon: ReactElement
  readonly Panel: ComponentType<PanelProps>
}[] = [
  { sheet: 'place', name: () => t('Positions'), icon: <path d="M3 3h8v8H3zM13 3h8v8h-8zM3 13h8v8H3zM13 13h8v8h-8z" />, Panel: PlaceSheet },
  { sheet: 'joining', name: () => t('Joining'), icon: <path d="M3 6h7v12H3zM14 6h7v12h-7zM10 12h4M12 9v6" />, Panel: JoiningSheet },
  {
    sheet: 'check',
    name: () => t('Seam check'),
    icon: <path d="M3 7c1.6-3.2 5.4-3.2 7 0c-1.6 3.2-5.4 3.2-7 0M6.5 13.5l3.5 6H3zM13.5 7H21M13.5 17H21" />,
    Panel: SeamSheet,
  },
  {
    sheet: 'cutting',
    name: () => t('Cutting'),
    icon: (
      <>
        <path d="M4 3h8v18H4zM4 7.5h3M4 12h4M4 16.5h3" />
        <path strokeDasharray="3 2.4" d="M17.5 3v18" />
      </>
    ),
    Panel: CuttingSheet,
  },
  {
    sheet: 'booklet',
    name: () => t('Booklet'),
    icon: <path d="M12 6C9 4 6 4 3 5v14c3-1 6-1 9 1 3-2 6-2 9-1V5c-3-1-6-1-9 1zM12 6v14" />,
    Panel: QuiltBookletSheet,
  },
]

/** The width up to which the stylesheet puts the tabs in a row above the sheet. */
const ROW_LAYOUT = '(max-width: 1100px)'

export function QuiltSheets({ quilt }: PanelProps) {
  const open = useQuiltView((view) => view.sheet)
  const isRow = useMedia(ROW_LAYOUT)
  const current = SHEETS.find(({ sheet }) => sheet === open) ?? (SHEETS[0] as (typeof SHEETS)[number])
  return (
    <div className="side right">
      {!isRow && <SheetEdge />}
      <div
        className="tabs"
        data-part="tabs"
        role="tablist"
        aria-label={t('Sheets')}
        aria-orientation={isRow ? 'horizontal' : 'vertical'}
        onKeyDown={(event) => moveToTab(event, current.sheet)}
      >
        {SHEETS.map(({ sheet, name, icon }) => (
          <button
            key={sheet}
            type="button"
            role="tab"
            id={`tab-${sheet}`}
            aria-selected={sheet === current.sheet}
            aria-controls="sheet"
            tabIndex={sheet === current.sheet ? 0 : -1}
            onClick={() => setQuiltView({ sheet })}
          >
            <svg viewBox="0 0 24 24" width="22" height="22" fill="none" stroke="currentColor" strokeWidth="1.7" aria-hidden="true">
              {icon}
            </svg>
            {name()}
          </button>
        ))}
      </div>
      <div className="sheet" data-part="sheet" role="tabpanel" id="sheet" aria-labelledby={`tab-${current.sheet}`}>
        <QuiltSummary quilt={quilt} />
        <LazyPanel key={current.sheet}>
          <current.Panel quilt={quilt} />
        </LazyPanel>
      </div>
    </div>
  )
}

const ARROWS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }

function moveToTab(event: KeyboardEvent<HTMLElement>, current: QuiltSheet): void {
  const by = ARROWS[event.key]
  const end = { Home: 0, End: SHEETS.length - 1 }[event.key]
  if (by === undefined && end === undefined) return
  event.preventDefault()
  const at = SHEETS.findIndex(({ sheet }) => sheet === current)
  const next = SHEETS[end ?? (at + (by ?? 0) + SHEETS.length) % SHEETS.length] as (typeof SHEETS)[number]
  setQuiltView({ sheet: next.sheet })
  document.getElementById(`tab-${next.sheet}`)?.focus()
}
