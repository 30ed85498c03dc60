/** The colour sheet: light and dark, other colourings, colours from a photograph, alike patches together. */
import './Colour.css'
import { ColourGroups } from './ColourGroups.tsx'
import { Colourings } from './Colourings.tsx'
import { ColourPalette } from './ColourPalette.tsx'
import { ColourValue } from './ColourValue.tsx'

export function Colour() {
  return (
    <>
      <ColourValue />
      <Colourings />
      <ColourPalette />
      <ColourGroups />
    </>
  )
}
