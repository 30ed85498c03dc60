/** The page: the header; below it the tray and fabrics, the board and the sheets, or a quilt. */
import { lazy } from 'react'
import { LazyPanel } from '../controls/LazyPanel.tsx'
import { FabricList } from '../tray/FabricList.tsx'
import { Tray } from '../tray/Tray.tsx'
import { useDroppedFiles } from '../library/OpenFileButton.tsx'
import { SheetTabs } from '../sheets/SheetTabs.tsx'
import { useStore } from '../document/store.ts'
import { BoardArea } from './BoardArea.tsx'
import { DraggedItem } from './DraggedItem.tsx'
import { Header } from './Header.tsx'
import { SaveStatus } from './SaveStatus.tsx'
import { SkipLinks } from './SkipLinks.tsx'
import { usePageKeys } from './usePageKeys.ts'

const QuiltPage = lazy(async () => ({ default: (await import('../quilt/QuiltPage.tsx')).QuiltPage }))

export function App() {
  // A new language renders the whole page again, because most texts are not part of any state.
  const language = useStore(({ view }) => view.language)
  const isQuilt = useStore(({ quilt }) => quilt !== null)
  usePageKeys()
  useDroppedFiles()
  return (
    <div className="page" key={language}>
      <SkipLinks />
      <Header />
      <SaveStatus />
      <main>
        {isQuilt ? (
          <LazyPanel fallback={<div />}>
            <QuiltPage />
          </LazyPanel>
        ) : (
          <BlockPage />
        )}
      </main>
      <DraggedItem />
    </div>
  )
}

const BlockPage = () => (
  <>
    <div className="side left">
      <Tray />
      <FabricList />
    </div>
    <BoardArea />
    <SheetTabs />
  </>
)
