/** How to lay the ruler when a unit is trimmed, for either hand: a picture and a sentence for each position of the unit. */
import { useState } from 'react'
import { type Block, HANDS, type Hand, type RulerCut, sayLength, trimCuts, trimPictures, type Unit } from '../../../geometry/index.ts'
import { readSetting, writeSetting } from '../../document/browserSettings.ts'
import { StepPicture } from '../../drawing/StepPicture.tsx'
import { label, t } from '../../words/words.ts'

const HAND_NAMES: Readonly<Record<Hand, string>> = { right: label('I’m right-handed'), left: label('I’m left-handed') }

/** Remembers the hand that the maker chose last. */
const HAND_SETTING = 'nestwright.hand'
const savedHand = (): Hand => (readSetting(HAND_SETTING) === 'left' ? 'left' : 'right')

export function Trimming({ unit, block }: { readonly unit: Unit; readonly block: Block }) {
  const [hand, setHand] = useState<Hand>(savedHand)
  if (unit.kind === 'polygon') return null
  const cuts = trimCuts(unit, block, hand)
  if (cuts.length === 0) return null
  const pictures = trimPictures(unit, block, hand)
  const choose = (next: Hand): void => {
    setHand(next)
    writeSetting(HAND_SETTING, next)
  }
  return (
    <>
      <label>
        {t('Trimming')}
        <select value={hand} onChange={(event) => choose(event.target.value as Hand)}>
          {HANDS.map((one) => (
            <option key={one} value={one}>
              {t(HAND_NAMES[one])}
            </option>
          ))}
        </select>
      </label>
      <div className="trimmed">
        {pictures.map((drawing) => (
          <StepPicture key={drawing.title} drawing={drawing} fabrics={block.fabrics} unit={block.measure.unit} />
        ))}
      </div>
      <ol className="moves">
        {cuts.map((cut) => (
          <li key={cut.turn}>{cutWords(cut, block.measure.unit)}</li>
        ))}
      </ol>
      <p className="caution">
        {t(
          'Close the cutter after every cut. Cut away from yourself, with your fingers behind the edge of the ruler. The cutter’s instructions and your teacher come first.',
        )}
      </p>
    </>
  )
}

const POSITIONS = [
  label('Leave it as it is'),
  label('Rotate it 90° to the right'),
  label('Rotate it 180°'),
  label('Rotate it 90° to the left'),
] as const

function cutWords({ turn, edges, size, points, seams }: RulerCut, unit: 'in' | 'cm'): string {
  const say = (length: number): string => `${sayLength(length, unit)} ${unit}`
  const edge = edges[0] === 'right' ? t('right') : t('left')
  const slanting = [...new Set(seams.filter(({ angle }) => angle % 90 > 1e-9).map(({ angle }) => Math.round(angle)))]
  const angles = slanting.map((angle) => t('the {angle}° line on the slanted seam', { angle }))
  const tips = points
    .filter(({ type }) => type !== 'end')
    .map(({ type, at }) => {
      const place = { side: say(at.fromSide), edge, top: say(at.fromTop) }
      return type === 'tip'
        ? t('the point {side} from the {edge} edge and {top} from the top', place)
        : t('the crossing {side} from the {edge} edge and {top} from the top', place)
    })
  const position = t(POSITIONS[turn])
  return t('{lies}. Line up {lines}. Cut along the {edge} and the top; {wide} × {high} stays under the ruler.', {
    lies: position,
    lines: [...angles, ...tips].join(', '),
    edge,
    wide: say(size[0]),
    high: say(size[1]),
  })
}
