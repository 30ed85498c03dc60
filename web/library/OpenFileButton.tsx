/** Opens block files and booklets, one or many: picked from a dialog, or dropped anywhere on the page. */
import { useEffect } from 'react'
import { FileButton } from '../controls/FileButton.tsx'
import { openDroppedFiles } from '../keeping/start.ts'
import { t } from '../words/words.ts'

export function OpenFileButton({ done }: { readonly done?: () => void }) {
  return (
    <FileButton
      multiple
      accept=".json,.pdf,application/json,application/pdf"
      inputLabel={t('Block file')}
      onPick={(files) => void openDroppedFiles([...files]).then((opened) => opened && done?.())}
    >
      {t('Open file')}
    </FileButton>
  )
}

/** Opens files dropped on the page. Otherwise the browser would leave the page to show the file. */
export function useDroppedFiles(): void {
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (event.dataTransfer?.types.includes('Files') === true) event.preventDefault()
    }
    const drop = (event: DragEvent): void => {
      const files = [...(event.dataTransfer?.files ?? [])]
      if (files.length === 0) return
      event.preventDefault()
      void openDroppedFiles(files)
    }
    window.addEventListener('dragover', over)
    window.addEventListener('drop', drop)
    return () => {
      window.removeEventListener('dragover', over)
      window.removeEventListener('drop', drop)
    }
  }, [])
}
