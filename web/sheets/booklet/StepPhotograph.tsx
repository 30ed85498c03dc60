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
        inputLabel={t('Photo for step {number}', { number })}
        buttonLabel={exists ? t('Change photo of step {number}', { number }) : t('Add photo to step {number}', { number })}
        onPick={([file]) => void addPhotograph(stepKey, file)}
      >
        {exists ? t('Change photo') : t('Add photo')}
      </FileButton>
      {exists && (
        <button
          className="danger"
          type="button"
          aria-label={t('Delete photo of step {number}', { number })}
          onClick={() => edit(setStepPhotograph(stepKey, null))}
        >
          {t('Delete photo')}
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
