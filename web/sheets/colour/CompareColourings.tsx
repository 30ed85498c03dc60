/** Two to four colourings, large and side by side over the whole page. */
import { useModal } from '../../controls/useModal.ts'
import { t } from '../../words/words.ts'
import { ColouringThumbnail, type ThumbnailProps } from './ColouringThumbnail.tsx'
import { colouringResults, type NumberedColouring } from './colouringWords.ts'

interface Props extends Omit<ThumbnailProps, 'colouring'> {
  readonly compared: readonly NumberedColouring[]
  readonly take: (one: NumberedColouring) => void
  readonly close: () => void
}

export function CompareColourings({ compared, take, close, ...picture }: Props) {
  const dialog = useModal()
  return (
    <dialog ref={dialog} className="compare" aria-labelledby="compare-title" onClose={close}>
      <header>
        <h2 id="compare-title">{t('Compare colourings')}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {t('Close')}
        </button>
      </header>
      <ul data-count={compared.length}>
        {compared.map((one) => (
          <li key={one.number}>
            <ColouringThumbnail {...picture} colouring={one.colouring} />
            <p>{[one.number === 0 ? t('Your colouring') : t('Colouring {n}', { n: one.number }), ...colouringResults(one.colouring)].join(' · ')}</p>
            <button
              type="button"
              onClick={() => {
                take(one)
                dialog.current?.close()
              }}
            >
              {t('Use this one')}
            </button>
          </li>
        ))}
      </ul>
    </dialog>
  )
}
