/** The colour sheet: light and dark, other colourings, colours from a photograph, alike patches together. */
import './Colour.css'
import { useStore } from '../../document/store.ts'
import { t } from '../../words/words.ts'
import { ColourGroups } from './ColourGroups.tsx'
import { Colourings } from './Colourings.tsx'
import { ColourPalette } from './ColourPalette.tsx'
import { ColourValue } from './ColourValue.tsx'

export function Colour() {
  const empty = useStore(({ history }) => history.block.units.length === 0)
  if (empty)
    return (
      <>
        <NothingYet />
        <ColourPalette />
      </>
    )
  return (
    <>
      <ColourValue />
      <Colourings />
      <ColourPalette />
      <ColourGroups />
    </>
  )
}

function NothingYet() {
  return (
    <section aria-labelledby="colour-title">
      <h2 id="colour-title">{t('Light and dark')}</h2>
      <p className="hint">{t('No patch is laid yet. Lay a unit on the board: its light and dark, and other colourings of it, are shown here.')}</p>
    </section>
  )
}
