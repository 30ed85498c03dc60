/** The head of the library: its title, the search, the choice between the maker's blocks and the archive, and the button that closes it. */
import { t } from '../words/words.ts'

interface Props {
  readonly search: string
  readonly setSearch: (search: string) => void
  readonly showArchive: boolean
  readonly setShowArchive: (show: boolean) => void
  readonly counts: { readonly kept: number; readonly archived: number }
  readonly onClose: () => void
}

export function LibraryHeader({ search, setSearch, showArchive, setShowArchive, counts, onClose }: Props) {
  return (
    <div className="blocks-header">
      <h2 id="blocks-title">{t('My blocks')}</h2>
      <input
        type="search"
        className="search"
        aria-label={t('Search by name or fabric')}
        placeholder={t('Search by name or fabric')}
        value={search}
        onChange={(event) => setSearch(event.target.value)}
      />
      <div className="buttons">
        <button type="button" aria-pressed={!showArchive} onClick={() => setShowArchive(false)}>
          {t('My blocks ({n})', { n: counts.kept })}
        </button>
        <button type="button" aria-pressed={showArchive} onClick={() => setShowArchive(true)}>
          {t('Archive ({n})', { n: counts.archived })}
        </button>
      </div>
      <button type="button" className="done" onClick={onClose}>
        {t('Close')}
      </button>
    </div>
  )
}
