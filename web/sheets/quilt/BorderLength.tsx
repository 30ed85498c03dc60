/** How long to cut both strips of a border, from up to three measurements of what is sewn so far. */
import { useState } from 'react'
import { sayLength, stripFor } from '../../../geometry/index.ts'
import { lengthProblem, parseLengthEntry } from '../../controls/lengthEntry.ts'
import type { MeasureUnit } from '../../../geometry/index.ts'
import { t } from '../../words/words.ts'

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
            ? unit === 'in'
              ? t('Measure the sewn piece in up to three places, in inches.')
              : t('Measure the sewn piece in up to three places, in centimetres.')
            : `${t('Cut both strips {length} long.', { length: `${sayLength(found.length, unit)} ${unit}` })} ${
                found.eases.every(Boolean) ? t('The edges can be eased on.') : t('One edge is too far off to be eased on: see where it stretched.')
              }`}
      </p>
    </>
  )
}
