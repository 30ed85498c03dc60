/** Opens files of one block or of many: chosen in a dialog, or dropped anywhere on the page. */
import { type ChangeEvent, useEffect, useRef } from 'react'
import { openFiles } from '../keeping/start.ts'
import { t } from '../words/words.ts'

export function OpenFileButton({ done }: { readonly done?: () => void }) {
  const file = useRef<HTMLInputElement>(null)
  const open = (event: ChangeEvent<HTMLInputElement>): void => {
    void openFiles([...(event.target.files ?? [])]).then((opened) => opened && done?.())
    event.target.value = ''
  }
  return (
    <>
      <button type="button" onClick={() => file.current?.click()}>
        {t('Open a file')}
      </button>
      <input
        ref={file}
        type="file"
        multiple
        accept=".json,.pdf,application/json,application/pdf"
        hidden
        aria-label={t('Block file')}
        onChange={open}
      />
    </>
  )
}

/** What is dropped is opened here: left to itself, a browser would leave the page for it. */
export function useDroppedFiles(): void {
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (event.dataTransfer?.types.includes('Files') === true) event.preventDefault()
    }
    const drop = (event: DragEvent): void => {
      const files = [...(event.dataTransfer?.files ?? [])]
      if (files.length === 0) return
      event.preventDefault()
      void openFiles(files)
    }
    window.addEventListener('dragover', over)
    window.addEventListener('drop', drop)
    return () => {
      window.removeEventListener('dragover', over)
      window.removeEventListener('drop', drop)
    }
  }, [])
}
