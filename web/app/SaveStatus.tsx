/** One line under the head of the page where the block is not kept as it should be, or a newer page is ready, with what can be done. */
import './saveStatus.css'
import { type ReactNode, useState } from 'react'
import { goOnWithCopy, takeOver, whenKept } from '../keeping/openBlock.ts'
import { saveFile } from '../keeping/download.ts'
import { takeNewer, useNewer } from '../keeping/offline.ts'
import { type StorageProblem, getState, useStore } from '../document/store.ts'
import { t } from '../words/words.ts'

export function SaveStatus() {
  const { readOnly: elsewhere, trouble } = useStore(({ currentBlock }) => currentBlock)
  const [later, putOff] = useState(false)
  const newer = useNewer() && !later
  if (trouble !== null) return <Line urgent>{TROUBLES[trouble]()}</Line>
  if (elsewhere) return <Line urgent>{inAnotherTab()}</Line>
  return newer ? <Line>{newerReady(() => putOff(true))}</Line> : null
}

function Line({ urgent = false, children }: { readonly urgent?: boolean; readonly children: ReactNode }) {
  return (
    <div className="keeping" role={urgent ? 'alert' : 'status'}>
      {children}
    </div>
  )
}

function newerReady(putOff: () => void): ReactNode {
  return (
    <>
      <p>{t('A newer version of Nestwright is ready.')}</p>
      <button type="button" onClick={() => void whenKept(takeNewer)}>
        {t('Load it now')}
      </button>
      <button type="button" onClick={putOff}>
        {t('Later')}
      </button>
    </>
  )
}

function inAnotherTab(): ReactNode {
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
  none: () => withFile(t('This browser keeps nothing here (a private window?): save the block as a file before you leave.')),
  full: () => withFile(t('The disk is full, and your last changes are not kept: save the block as a file. It is tried again and again.')),
  failed: () => withFile(t('Your last changes could not be kept: save the block as a file. It is tried again and again.')),
  older: () => <p>{t('An older Nestwright is open in another tab and holds your blocks: close that tab.')}</p>,
  newer: () => withLoading(t('Your blocks are held by another tab with a newer Nestwright: load this page anew.')),
  later: () => withLoading(t('Your blocks were kept by a newer Nestwright: load this page anew to see them. What you do here is not kept.')),
}

const withLoading = (sentence: string): ReactNode => (
  <>
    <p>{sentence}</p>
    <button type="button" onClick={() => window.location.reload()}>
      {t('Load anew')}
    </button>
  </>
)

const withFile = (sentence: string): ReactNode => (
  <>
    <p>{sentence}</p>
    <button type="button" onClick={() => saveFile(getState().history.block)}>
      {t('Save it as a file')}
    </button>
  </>
)
