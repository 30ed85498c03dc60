/** The colour sheet: other colourings, light and dark, matching patches together, colours from a photo. */
import './colour.css'
import { useStore } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { MatchingPatches } from './MatchingPatches.tsx'
import { OtherColourings } from './OtherColourings.tsx'
import { PhotoPalette } from './PhotoPalette.tsx'
import { FabricValues } from './FabricValues.tsx'

export function ColourPanels() {
  const empty = useStore(({ history }) => history.block.units.length === 0)
  if (empty)
    return (
      <>
        <NothingYet />
        <PhotoPalette />
      </>
    )
  return (
    <>
      <OtherColourings />
      <FabricValues />
      <MatchingPatches />
      <PhotoPalette />
    </>
  )
}

function NothingYet() {
  return (
    <section aria-labelledby="colour-title">
      <h2 id="colour-title">{t('Light and dark')}</h2>
      <p className="hint">{t('Put a unit on the board to see its lights and darks and other colourings here.')}</p>
    </section>
  )
}
