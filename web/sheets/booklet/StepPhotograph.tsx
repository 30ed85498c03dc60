/** The buttons that add, change and remove the photograph of a step. */
import { setStepPhotograph } from '../../../geometry/index.ts'
import { FileButton } from '../../controls/FileButton.tsx'
import { edit, setView, getState } from '../../document/store.ts'
import { stepPhoto } from '../../keeping/readPhoto.ts'
import { t } from '../../words/words.ts'

export function StepPhotograph({ stepKey, number, exists }: { readonly stepKey: string; readonly number: number; readonly exists: boolean }) {
  return (
    <>
      <FileButton
        accept="image/*"
        inputLabel={t('Photograph for step {number}', { number })}
        buttonLabel={exists ? t('Change the photograph of step {number}', { number }) : t('Add a photograph to step {number}', { number })}
        onPick={([file]) => void addPhotograph(stepKey, file)}
      >
        {exists ? t('Change the photograph') : t('Add a photograph')}
      </FileButton>
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

async function addPhotograph(stepKey: string, file: File): Promise<void> {
  const { id } = getState().currentBlock
  const photo = await stepPhoto(file)
  if (!photo.ok) setView({ notice: photo.message })
  // Reading takes a moment: if another block was opened meanwhile, the photograph does not belong to it.
  else if (getState().currentBlock.id === id) edit(setStepPhotograph(stepKey, photo.value))
}
