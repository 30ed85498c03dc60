/** The buttons that add, change and remove the photograph of a step. */
import { useRef } from 'react'
import { setStepPhotograph } from '../../../geometry/index.ts'
import { edit, setView, getState } from '../../document/store.ts'
import { photoOfStep } from '../../keeping/readPhoto.ts'
import { t } from '../../words/words.ts'

export function StepPhotograph({ stepKey, number, exists }: { readonly stepKey: string; readonly number: number; readonly exists: boolean }) {
  const field = useRef<HTMLInputElement>(null)
  return (
    <>
      <input
        ref={field}
        type="file"
        accept="image/*"
        hidden
        aria-label={t('Photograph for step {number}', { number })}
        onChange={(event) => {
          void addPhotograph(stepKey, event.target.files?.[0])
          event.target.value = ''
        }}
      />
      <button
        type="button"
        aria-label={exists ? t('Change the photograph of step {number}', { number }) : t('Add a photograph to step {number}', { number })}
        onClick={() => field.current?.click()}
      >
        {exists ? t('Change the photograph') : t('Add a photograph')}
      </button>
      {exists && (
        <button
          type="button"
          aria-label={t('Take away the photograph of step {number}', { number })}
          onClick={() => edit(setStepPhotograph(stepKey, null))}
        >
          {t('Take it away')}
        </button>
      )}
    </>
  )
}

async function addPhotograph(stepKey: string, file: File | undefined): Promise<void> {
  if (file === undefined) return
  const { id } = getState().currentBlock
  const photo = await photoOfStep(file)
  if (!photo.ok) setView({ notice: photo.message })
  // Reading takes a moment: if another block was opened meanwhile, the photograph does not belong to it.
  else if (getState().currentBlock.id === id) edit(setStepPhotograph(stepKey, photo.value))
}
