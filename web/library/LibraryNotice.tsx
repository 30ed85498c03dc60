/** The latest notice, repeated inside the dialog because a screen reader does not read the page behind it; and a button to restore the block just archived. */
import { useStore } from '../document/store.ts'
import { restoreBlock, tryOrNotify } from '../keeping/blockActions.ts'
import { t } from '../words/words.ts'

/** Defined once, so that React calls it once and the button takes the focus once. */
const takeFocus = (here: HTMLElement | null): void => here?.focus()

interface Props {
  /** The id of the block just archived. */
  readonly archived: string | null
  readonly onRestored: () => void
}

export function LibraryNotice({ archived, onRestored }: Props) {
  const notice = useStore(({ view }) => view.notice)
  const notices = useStore(({ view }) => view.notices)
  return (
    <div className={notice === '' && archived === null ? 'blocks-notice silent' : 'blocks-notice'}>
      <p role="status">
        <span key={notices}>{notice}</span>
      </p>
      {archived !== null && (
        <button type="button" ref={takeFocus} onClick={() => void tryOrNotify(() => restoreBlock(archived)).then(onRestored)}>
          {t('Restore')}
        </button>
      )}
    </div>
  )
}
