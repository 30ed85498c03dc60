/** How long to cut both strips of a border, from up to three measurements of what is sewn so far. */
import { useState } from 'react'
import { sayLength, stripFor } from '../../../geometry/index.ts'
import { lengthProblem, parseLengthEntry } from '../../controls/lengthEntry.ts'
import type { MeasureUnit } from '../../../geometry/index.ts'
import { t } from '../../words/words.ts'

const MEASURE: Readonly<Record<MeasureUnit, () => string>> = {
  in: () => t('Measure the sewn piece in up to three places, in inches.'),
  cm: () => t('Measure the sewn piece in up to three places, in centimetres.'),
}

export function BorderLength({ unit }: { readonly unit: MeasureUnit }) {
  const [texts, setTexts] = useState<readonly string[]>(['', '', ''])
  const lengths = texts.flatMap((text) => parseLengthEntry(text) ?? [])
  const troubles = texts.map((text) => (text.trim() === '' ? null : lengthProblem(text)))
  const trouble = troubles.find((one) => one !== null)
  const found = lengths.length === 0 ? null : stripFor(lengths, unit)
  const names = [t('Through the middle'), t('One edge'), t('The other edge')]
  return (
    <>
      <div className="threes">
        {texts.map((text, place) => (
          <label key={names[place]}>
            {names[place]}
            <input
              value={text}
              inputMode="text"
              aria-invalid={troubles[place] !== null}
              onChange={(event) => setTexts(texts.map((one, other) => (other === place ? event.target.value : one)))}
            />
          </label>
        ))}
      </div>
      <p className={trouble === undefined ? 'hint' : 'trouble'} role="status">
        {trouble !== undefined
          ? trouble
          : found === null
            ? MEASURE[unit]()
            : `${t('Cut both strips {length} long.', { length: `${sayLength(found.length, unit)} ${unit}` })} ${
                found.eases.every(Boolean) ? t('You can ease the edges to fit.') : t('One edge is too far off to ease. Check where it stretched.')
              }`}
      </p>
    </>
  )
}
