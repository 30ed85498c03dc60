/**
 * The right side of the page: a row of tabs, and the open sheet with its panels.
 *
 * The code of a sheet is loaded when it is first opened, so that the page starts at once. The summary of the seam check stands above every sheet.
 */
import { type ComponentType, type KeyboardEvent, lazy, type ReactElement } from 'react'
import { setView, type SheetName, useStore } from '../document/store.ts'
import { t } from '../words/words.ts'
import { SeamCheck } from './check/SeamCheck.tsx'
import { CheckSummary } from './check/CheckSummary.tsx'
import { SheetEdge } from './SheetEdge.tsx'
import { LazyPanel } from '../controls/LazyPanel.tsx'
import { useMedia } from '../controls/useMedia.ts'

const ColourPanels = lazy(async () => ({ default: (await import('./colour/ColourPanels.tsx')).ColourPanels }))
const SelectedUnits = lazy(async () => ({ default: (await import('./block/SelectedUnits.tsx')).SelectedUnits }))
const BlockSettings = lazy(async () => ({ default: (await import('./block/BlockSettings.tsx')).BlockSettings }))
const CutList = lazy(async () => ({ default: (await import('./cutting/CutList.tsx')).CutList }))
const UnitMethods = lazy(async () => ({ default: (await import('./methods/UnitMethods.tsx')).UnitMethods }))
const Stash = lazy(async () => ({ default: (await import('./cutting/Stash.tsx')).Stash }))
const SizeChartPanel = lazy(async () => ({ default: (await import('./cutting/SizeChartPanel.tsx')).SizeChartPanel }))
const TurnWholeBlock = lazy(async () => ({ default: (await import('./block/TurnWholeBlock.tsx')).TurnWholeBlock }))
const QuiltMaterials = lazy(async () => ({ default: (await import('./quilt/QuiltMaterials.tsx')).QuiltMaterials }))
const Quilting = lazy(async () => ({ default: (await import('./quilting/Quilting.tsx')).Quilting }))
const SettingPanel = lazy(async () => ({ default: (await import('./setting/SettingPanel.tsx')).SettingPanel }))
const BookletSheet = lazy(async () => ({ default: (await import('./booklet/BookletSheet.tsx')).BookletSheet }))
const SewnComparison = lazy(async () => ({ default: (await import('./check/SewnComparison.tsx')).SewnComparison }))

interface SheetTab {
  readonly sheet: SheetName
  readonly name: () => string
  readonly icon: ReactElement
  /** From the top. */
  readonly panels: readonly ComponentType[]
}

const SHEETS: readonly SheetTab[] = [
  {
    sheet: 'block',
    name: () => t('Block'),
    icon: <path d="M4 4h16v16H4zM4 4l16 16M20 4L4 20" />,
    panels: [SelectedUnits, BlockSettings, TurnWholeBlock],
  },
  {
    sheet: 'findings',
    name: () => t('Seam check'),
    icon: <path d="M3 7c1.6-3.2 5.4-3.2 7 0c-1.6 3.2-5.4 3.2-7 0M6.5 13.5l3.5 6H3zM13.5 7H21M13.5 17H21" />,
    panels: [SeamCheck, SewnComparison],
  },
  {
    sheet: 'colour',
    name: () => t('Colour'),
    icon: <path d="M12 3v18M12 3a9 9 0 0 1 0 18a9 9 0 0 1 0-18M15 6.5l3 3M14 11l5 4" />,
    panels: [ColourPanels],
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
    panels: [CutList, UnitMethods, Stash, QuiltMaterials, SizeChartPanel],
  },
  {
    sheet: 'quilting',
    name: () => t('Quilting'),
    icon: (
      <>
        <path d="M3.5 20.5L16.4 4.8a1.9 1.9 0 0 1 2.9 2.4zM17.9 6l-1.6 2" />
        <path strokeDasharray="3 2.2" d="M18 6.5c5.5 3-4.5 6.5-1.5 10.5c1.4 1.8 3.6 1.2 4.5-.5" />
      </>
    ),
    panels: [Quilting],
  },
  { sheet: 'setting', name: () => t('Setting'), icon: <path d="M3 3h8v8H3zM13 3h8v8h-8zM3 13h8v8H3zM13 13h8v8h-8z" />, panels: [SettingPanel] },
  {
    sheet: 'booklet',
    name: () => t('Booklet'),
    icon: <path d="M12 6C9 4 6 4 3 5v14c3-1 6-1 9 1 3-2 6-2 9-1V5c-3-1-6-1-9 1zM12 6v14" />,
    panels: [BookletSheet],
  },
]

export function SheetTabs() {
  const open = useStore(({ view }) => view.sheet)
  const isRow = useMedia(ROW_LAYOUT)
  const current = SHEETS.find(({ sheet }) => sheet === open) ?? (SHEETS[0] as SheetTab)
  return (
    <div className="side right">
      {!isRow && <SheetEdge />}
      <div
        className="tabs"
        data-part="tabs"
        role="tablist"
        aria-label={t('Sheets')}
        aria-orientation={isRow ? 'horizontal' : 'vertical'}
        onKeyDown={(event) => moveToTab(event, current)}
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
            onClick={() => setView({ sheet })}
          >
            <svg viewBox="0 0 24 24" width="22" height="22" fill="none" stroke="currentColor" strokeWidth="1.7" aria-hidden="true">
              {icon}
            </svg>
            {name()}
          </button>
        ))}
      </div>
      <div className="sheet" data-part="sheet" role="tabpanel" id="sheet" aria-labelledby={`tab-${current.sheet}`}>
        <CheckSummary />
        <LazyPanel key={current.sheet}>
          {current.panels.map((Panel, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the panels of a sheet never change their order
            <Panel key={`${current.sheet} ${place}`} />
          ))}
        </LazyPanel>
      </div>
    </div>
  )
}

/** The width up to which the stylesheet puts the tabs in a row above the sheet. */
const ROW_LAYOUT = '(max-width: 1100px)'

const ARROWS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1 }

/** Arrow keys move from tab to tab, as in any row of tabs; Home and End go to the first and the last. */
function moveToTab(event: KeyboardEvent<HTMLElement>, current: SheetTab): void {
  const by = ARROWS[event.key]
  const end = { Home: 0, End: SHEETS.length - 1 }[event.key]
  if (by === undefined && end === undefined) return
  event.preventDefault()
  const next = SHEETS[end ?? (SHEETS.indexOf(current) + (by ?? 0) + SHEETS.length) % SHEETS.length] as SheetTab
  setView({ sheet: next.sheet })
  document.getElementById(`tab-${next.sheet}`)?.focus()
}
