/**
 * The maker's own blocks: pictures to choose from, and beside them everything that can be done with one.
 *
 * In      the cards of the database.
 * Out     a dialog over the page; opening a block closes it.
 */
import './library.css'
import { type RefObject, useEffect, useRef, useState } from 'react'
import { setView, useStore } from '../document/store.ts'
import { canKeep, openBlock, useCards } from '../keeping/openBlock.ts'
import type { Card } from '../keeping/schema.ts'
import { archiveBlock, tryOrNotify } from '../keeping/blockActions.ts'
import { t, tn } from '../words/words.ts'
import { ArchiveHeader } from './ArchiveHeader.tsx'
import { BlockCard, detailsButtonId } from './BlockCard.tsx'
import { BlockDetails } from './BlockDetails.tsx'
import { CARDS_AT_ONCE, CardGrid } from './CardGrid.tsx'
import { LibraryHeader } from './LibraryHeader.tsx'
import { LibraryNotice } from './LibraryNotice.tsx'
import { StartBlock } from './StartBlock.tsx'

export function BlockLibrary({ close }: { readonly close: () => void }) {
  const dialog = useLibraryDialog()
  const cards = useCards()
  const open = useStore(({ currentBlock }) => currentBlock.id)
  const [search, setSearch] = useState('')
  const [showArchive, setShowArchive] = useState(false)
  const [chosen, setChosen] = useState<string | null>(null)
  const [archived, setArchived] = useState<string | null>(null)
  const [most, setMost] = useState(CARDS_AT_ONCE)
  const focusWhenBack = useFocusWhenBack(cards)
  const inView = cards.filter((card) => (card.aside !== null) === showArchive)
  const found = inView.filter((card) => matches(card, search)).sort((a, b) => (b.aside ?? b.changed) - (a.aside ?? a.changed))
  const details = inView.find(({ id }) => id === chosen)
  const closeDialog = (): void => dialog.current?.close()
  const closeDetails = (id: string): void => {
    setChosen(null)
    document.getElementById(detailsButtonId(id))?.focus()
  }
  const archive = (id: string): void => {
    setChosen(null)
    void tryOrNotify(() => archiveBlock(id)).then((done) => done && setArchived(id))
  }
  const onRestored = (): void => {
    focusWhenBack(archived)
    setArchived(null)
    setView({ notice: t('Restored.') })
  }
  const allArchived = cards.filter((card) => card.aside !== null)
  const kept = cards.length - allArchived.length
  return (
    <dialog ref={dialog} className="blocks" aria-labelledby="blocks-title" onClose={close}>
      <LibraryHeader
        search={search}
        setSearch={(next) => {
          setSearch(next)
          setMost(CARDS_AT_ONCE)
        }}
        showArchive={showArchive}
        setShowArchive={setShowArchive}
        counts={{ kept, archived: allArchived.length }}
        onClose={closeDialog}
      />
      <div className={details === undefined ? 'blocks-body' : 'blocks-body with'}>
        <div className="shelf">
          {!canKeep() && <p className="hint cannot-save">{t('This browser can’t save blocks. Save the open block as a file.')}</p>}
          {showArchive ? <ArchiveHeader cards={allArchived} /> : <StartBlock count={kept} onOpened={closeDialog} />}
          <p className="unseen" role="status">
            {tn(found.length, 'One block shown.', '{n} blocks shown.')}
          </p>
          {found.length === 0 && canKeep() && <p className="none">{noneWords(search, showArchive)}</p>}
          <CardGrid
            cards={found}
            most={most}
            setMost={setMost}
            render={(card) => (
              <BlockCard
                key={card.id}
                card={card}
                open={card.id === open}
                chosen={card.id === chosen}
                onOpen={() => void openBlock(card.id).then((done) => done && closeDialog())}
                onDetails={() => (card.id === chosen ? closeDetails(card.id) : setChosen(card.id))}
              />
            )}
          />
        </div>
        {details !== undefined && !showArchive && (
          <BlockDetails
            key={details.id}
            card={details}
            open={details.id === open}
            onBack={() => closeDetails(details.id)}
            onArchive={() => archive(details.id)}
            onOpened={closeDialog}
          />
        )}
      </div>
      <LibraryNotice archived={archived} onRestored={onRestored} />
    </dialog>
  )
}

/** Opens the dialog, with the focus on the block that is on the board, and clears the last notice. */
function useLibraryDialog(): RefObject<HTMLDialogElement | null> {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    dialog.current?.showModal()
    // If its picture was rendered before the dialog was shown, it could not take the focus by itself.
    dialog.current?.querySelector<HTMLElement>('[aria-current="true"]')?.focus()
    setView({ notice: '' })
  }, [])
  return dialog
}

/** A restored block's picture appears a moment later. The function returned says which block to wait for; then it gets the focus. */
function useFocusWhenBack(cards: readonly Card[]): (id: string | null) => void {
  const [restored, setRestored] = useState<string | null>(null)
  const isBack = cards.some(({ id, aside }) => id === restored && aside === null)
  useEffect(() => {
    if (isBack && restored !== null) document.getElementById(detailsButtonId(restored))?.focus()
  }, [isBack, restored])
  return setRestored
}

function noneWords(search: string, showArchive: boolean): string {
  if (search !== '') return t('No block or fabric is called “{sought}”.', { sought: search })
  return showArchive ? t('The archive is empty.') : t('No blocks yet. Start one above, or open a file.')
}

/** Whether every word of the search is in the block's name or in a fabric's name. */
function matches({ name, fabrics }: Card, search: string): boolean {
  const words = search.toLocaleLowerCase().split(/\s+/)
  const text = [name, ...fabrics].join('\n').toLocaleLowerCase()
  return words.every((word) => text.includes(word))
}
