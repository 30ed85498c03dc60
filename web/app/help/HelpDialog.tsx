/** Help over the page: what the trade's words mean, the keys of the board, and the hints of a first visit once more. */
import { useState } from 'react'
import { createPortal } from 'react-dom'
import { useModal } from '../../controls/useModal.ts'
import { HINTS, rememberHints } from '../../document/hints.ts'
import { setView, useStore } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { Glossary } from './Glossary.tsx'
import { KeyList } from './KeyList.tsx'
import './help.css'

export function HelpDialog({ close }: { readonly close: () => void }) {
  const dialog = useModal()
  // The hints are about a block.
  const quilt = useStore((state) => state.quilt !== null)
  const [showsKeys, setShowsKeys] = useState(false)
  const bringHintsBack = (): void => {
    dialog.current?.close()
    rememberHints(HINTS)
    setView({ hints: HINTS, mode: 'cloth', unitInHand: null, fabricInHand: null, notice: t('The hints are back, above the board.') })
  }
  return createPortal(
    <dialog ref={dialog} className="help" aria-labelledby="help-title" onClose={close}>
      <div className="titled">
        <h2 id="help-title">{t('Help')}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {t('Close')}
        </button>
      </div>
      <div className="buttons">
        <button type="button" aria-pressed={!showsKeys} onClick={() => setShowsKeys(false)}>
          {t('Words explained')}
        </button>
        <button type="button" aria-pressed={showsKeys} onClick={() => setShowsKeys(true)}>
          {t('Shortcuts')}
        </button>
        {!quilt && (
          <button type="button" className="hints-back" onClick={bringHintsBack}>
            {t('Show the hints again')}
          </button>
        )}
      </div>
      {showsKeys ? <KeyList /> : <Glossary />}
    </dialog>,
    document.body,
  )
}
