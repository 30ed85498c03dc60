/** A line below the header, if the block is not being saved or a newer version of the page is ready, with buttons for what to do. */
import './saveStatus.css'
import { type ReactNode, useState } from 'react'
import { goOnWithCopy, takeOver, whenSaved } from '../keeping/openBlock.ts'
import { saveFile } from '../keeping/download.ts'
import { installNewVersion, useNewVersionReady } from '../keeping/offline.ts'
import { openDocument, type StorageProblem, getState, useStore } from '../document/store.ts'
import { t } from '../words/words.ts'

export function SaveStatus() {
  const { readOnly: elsewhere, trouble } = useStore(({ currentBlock }) => currentBlock)
  const [dismissed, setDismissed] = useState(false)
  const newer = useNewVersionReady() && !dismissed
  if (trouble !== null) return <Line urgent>{TROUBLES[trouble]()}</Line>
  if (elsewhere) return <Line urgent>{openInAnotherTab()}</Line>
  return newer ? <Line>{newVersionReady(() => setDismissed(true))}</Line> : null
}

function Line({ urgent = false, children }: { readonly urgent?: boolean; readonly children: ReactNode }) {
  return (
    <div className="save-status" role={urgent ? 'alert' : 'status'}>
      {children}
    </div>
  )
}

function newVersionReady(dismiss: () => void): ReactNode {
  return (
    <>
      <p>{t('A new version of Nestwright is ready.')}</p>
      <button type="button" onClick={() => void whenSaved(installNewVersion)}>
        {t('Update now')}
      </button>
      <button type="button" onClick={dismiss}>
        {t('Later')}
      </button>
    </>
  )
}

function openInAnotherTab(): ReactNode {
  return (
    <>
      <p>{t('This block is open in another tab. Here you can only watch it change.')}</p>
      <button type="button" onClick={() => void takeOver()}>
        {t('Edit here instead')}
      </button>
      <button type="button" onClick={() => void goOnWithCopy()}>
        {t('Work on a copy')}
      </button>
    </>
  )
}

const TROUBLES: Readonly<Record<StorageProblem, () => ReactNode>> = {
  none: () => withSaveButton(t('This browser can’t save your blocks (is this a private window?). Save the block as a file before you leave.')),
  full: () => withSaveButton(t('Your disk is full, so your last changes aren’t saved. Save the block as a file; Nestwright keeps trying.')),
  failed: () => withSaveButton(t('Your last changes couldn’t be saved. Save the block as a file; Nestwright keeps trying.')),
  older: () => <p>{t('An older version of Nestwright is open in another tab. Close that tab to get to your blocks.')}</p>,
  newer: () => withReloadButton(t('A newer version of Nestwright is open in another tab. Reload this page to get to your blocks.')),
  later: () =>
    withReloadButton(t('Your blocks were saved by a newer version of Nestwright. Reload this page to see them; what you do here isn’t saved.')),
}

const withReloadButton = (sentence: string): ReactNode => (
  <>
    <p>{sentence}</p>
    <button type="button" onClick={() => window.location.reload()}>
      {t('Reload')}
    </button>
  </>
)

const withSaveButton = (sentence: string): ReactNode => (
  <>
    <p>{sentence}</p>
    <button type="button" onClick={() => saveFile(openDocument(getState()).block)}>
      {t('Save as a file')}
    </button>
  </>
)
