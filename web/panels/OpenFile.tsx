/** Opens a file of one block, or of many. */
import { type ChangeEvent, useRef } from 'react'
import { openFile } from '../state/save.ts'
import { t } from '../words/words.ts'

export function OpenFile({ done }: { readonly done?: () => void }) {
  const file = useRef<HTMLInputElement>(null)
  const open = (event: ChangeEvent<HTMLInputElement>): void => {
    const [chosen] = event.target.files ?? []
    if (chosen !== undefined) void openFile(chosen).then((opened) => opened && done?.())
    event.target.value = ''
  }
  return (
    <>
      <button type="button" onClick={() => file.current?.click()}>
        {t('Open a file')}
      </button>
      <input ref={file} type="file" accept=".json,.pdf,application/json,application/pdf" hidden aria-label={t('Block file')} onChange={open} />
    </>
  )
}
