/** A line below the header, if the block is not being saved or a newer version of the page is ready, with buttons for what to do. */
import './saveStatus.css'
import { type ReactNode, useState } from 'react'
import { goOnWithCopy, takeOver, whenSaved } from '../keeping/openBlock.ts'
import { saveFile } from '../keeping/download.ts'
import { installNewVersion, useNewVersionReady } from '../keeping/offline.ts'
import { type StorageProblem, getState, useStore } from '../document/store.ts'
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
      <p>{t('A newer version of Nestwright is ready.')}</p>
      <button type="button" onClick={() => void whenSaved(installNewVersion)}>
        {t('Load it now')}
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
      <p>{t('This block is open in another tab; here you see it as it changes there.')}</p>
      <button type="button" onClick={() => void takeOver()}>
        {t('Take it over here')}
      </button>
      <button type="button" onClick={() => void goOnWithCopy()}>
        {t('Go on with a copy')}
      </button>
    </>
  )
}

const TROUBLES: Readonly<Record<StorageProblem, () => ReactNode>> = {
  none: () => withSaveButton(t('This browser keeps nothing here (a private window?): save the block as a file before you leave.')),
  full: () => withSaveButton(t('The disk is full, and your last changes are not kept: save the block as a file. It is tried again and again.')),
  failed: () => withSaveButton(t('Your last changes could not be kept: save the block as a file. It is tried again and again.')),
  older: () => <p>{t('An older Nestwright is open in another tab and holds your blocks: close that tab.')}</p>,
  newer: () => withReloadButton(t('Your blocks are held by another tab with a newer Nestwright: load this page anew.')),
  later: () => withReloadButton(t('Your blocks were kept by a newer Nestwright: load this page anew to see them. What you do here is not kept.')),
}

const withReloadButton = (sentence: string): ReactNode => (
  <>
    <p>{sentence}</p>
    <button type="button" onClick={() => window.location.reload()}>
      {t('Load anew')}
    </button>
  </>
)

const withSaveButton = (sentence: string): ReactNode => (
  <>
    <p>{sentence}</p>
    <button type="button" onClick={() => saveFile(getState().history.block)}>
      {t('Save it as a file')}
    </button>
  </>
)
