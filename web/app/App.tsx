/** The page: the header, the tray and fabrics at the left, the board in the middle, the sheets at the right. */
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

export function App() {
  // A new language renders the whole page again, because most texts are not part of any state.
  const language = useStore(({ view }) => view.language)
  usePageKeys()
  useDroppedFiles()
  return (
    <div className="page" key={language}>
      <SkipLinks />
      <Header />
      <SaveStatus />
      <main>
        <div className="side left">
          <Tray />
          <FabricList />
        </div>
        <BoardArea />
        <SheetTabs />
      </main>
      <DraggedItem />
    </div>
  )
}
