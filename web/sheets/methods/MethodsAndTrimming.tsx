/** The ways to make a unit side by side: what each cuts, wastes and leaves; how much larger to cut; where the ruler lies when it is trimmed. */
import { useState } from 'react'
import {
  type Block,
  compareMethods,
  HANDS,
  type Hand,
  isTrimmed,
  type MethodChoice,
  methodOf,
  OVERSIZES,
  parseRational,
  type PossibleChoice,
  type RulerCut,
  sayLength,
  setMethod,
  setOversize,
  toNumber,
  trimCuts,
  type Unit,
} from '../../../geometry/index.ts'
import { edit } from '../../document/store.ts'
import { said, t, tell, tn } from '../../words/words.ts'
import { sayOneSize, saySides } from '../../words/sizes.ts'
import { METHOD_NAMES } from '../../words/unitWords.ts'

interface Props {
  readonly unit: Unit
  readonly block: Block
  /** All that are chosen: a way is taken for each of them. */
  readonly ids: readonly string[]
}

export function MethodsAndTrimming({ unit, block, ids }: Props) {
  return (
    <details className="order">
      <summary>{t('Ways to make it, and to trim it')}</summary>
      <MethodComparison unit={unit} block={block} ids={ids} />
      <OversizeField unit={unit} block={block} ids={ids} />
      <Trimming unit={unit} block={block} />
    </details>
  )
}

export function MethodComparison({ unit, block, ids }: Props) {
  return (
    <ul className="ways">
      {compareMethods(unit, block, oversizeOf(unit)).map((choice) => (
        <li key={choice.method}>
          <button
            type="button"
            aria-pressed={choice.method === methodOf(unit)}
            disabled={!choice.possible}
            onClick={() => edit(setMethod(ids, choice.method))}
          >
            {t(METHOD_NAMES[choice.method])}
          </button>
          <p className="hint">{inWords(choice, block)}</p>
        </li>
      ))}
    </ul>
  )
}

const oversizeOf = ({ oversize }: Unit): number => (oversize === undefined ? 0 : toNumber(parseRational(oversize) ?? { n: 0n, d: 1n }))

/** A little larger, to be trimmed: for what is trimmed at all. */
export function OversizeField({ unit, block, ids }: Props) {
  const measure = block.measure.unit
  if (!isTrimmed(unit.kind, methodOf(unit)) && unit.oversize === undefined) return null
  const now = oversizeOf(unit)
  const offered = [...new Set([...OVERSIZES[measure], ...(now > 0 ? [now] : [])])].sort((a, b) => a - b)
  return (
    <label>
      {t('Cut larger, then trim')}
      <select value={now} onChange={(event) => edit(setOversize(ids, event.target.value === '0' ? null : written(Number(event.target.value))))}>
        <option value={0}>{t('no larger than needed')}</option>
        {offered.map((by) => (
          <option key={by} value={by}>
            {t('by {length}', { length: sayOneSize(by, measure) })}
          </option>
        ))}
      </select>
    </label>
  )
}

/** As a maker would write it in the file. */
const written = (length: number): number | string => (length === 1 / 8 ? '1/8' : length === 1 / 4 ? '1/4' : length)

function inWords(choice: MethodChoice, block: Block): string {
  if (!choice.possible) return tell(choice.why)
  const { unit } = block.measure
  const area = (square: number): string => `${square.toFixed(1)} sq ${unit}`
  return [
    `${tn(choice.toCut, 'One piece to cut', '{n} pieces to cut')}, ${tn(choice.makes, 'one unit at once', '{n} units at once')}`,
    t('{cloth} of cloth a unit, {lost} of it lost', {
      cloth: area(choice.cloth / choice.makes),
      lost: area((choice.wasted - choice.saved) / choice.makes),
    }),
    ...(choice.biasSeams > 0 ? [tn(choice.biasSeams, 'one seam on the bias', '{n} seams on the bias')] : []),
    ...(choice.biasEdges > 0 ? [t('outside edges on the bias')] : []),
    ...bonusWords(choice, unit),
    choice.trimmed ? t('trimmed to size') : t('sewn as cut'),
  ]
    .join('; ')
    .concat('.')
}

function bonusWords({ bonus }: PossibleChoice, unit: 'in' | 'cm'): string[] {
  return bonus.map(({ finished, count }) =>
    tn(count, 'one bonus triangle square, {size} finished', '{n} bonus triangle squares, {size} finished', { size: sayOneSize(finished, unit) }),
  )
}

const HAND_NAMES: Readonly<Record<Hand, string>> = { right: said('right hand'), left: said('left hand') }
const HAND = 'nestwright.hand'

/** The hand that the maker chose last. */
function handKept(): Hand {
  try {
    return localStorage.getItem(HAND) === 'left' ? 'left' : 'right'
  } catch {
    return 'right'
  }
}

export function Trimming({ unit, block }: { readonly unit: Unit; readonly block: Block }) {
  const [hand, setHand] = useState<Hand>(handKept)
  if (unit.kind === 'polygon') return null
  const cuts = trimCuts(unit, block, hand)
  if (cuts.length === 0) return null
  const take = (taken: Hand): void => {
    setHand(taken)
    try {
      localStorage.setItem(HAND, taken)
    } catch {
      // A browser that keeps nothing asks again next time.
    }
  }
  return (
    <>
      <label>
        {t('Trimming, with the cutter in the')}
        <select value={hand} onChange={(event) => take(event.target.value as Hand)}>
          {HANDS.map((one) => (
            <option key={one} value={one}>
              {t(HAND_NAMES[one])}
            </option>
          ))}
        </select>
      </label>
      <div className="trimmed">
        {cuts.map((cut) => (
          <Ruler key={cut.turn} cut={cut} unit={block.measure.unit} />
        ))}
      </div>
      <ol className="moves">
        {cuts.map((cut) => (
          <li key={cut.turn}>{cutWords(cut, block.measure.unit)}</li>
        ))}
      </ol>
      <p className="caution">
        {t(
          'Close the cutter after every cut, cut away from yourself, fingers behind the ruler’s edge; its own instructions and your teacher come first.',
        )}
      </p>
    </>
  )
}

/** The ruler as it lies: its two cutting edges heavy, the seams and points that its lines must meet. */
function Ruler({ cut: { edges, size, points, seams }, unit }: { readonly cut: RulerCut; readonly unit: 'in' | 'cm' }) {
  const [wide, high] = size
  const right = edges[0] === 'right'
  const x = (fromSide: number): number => (right ? wide - fromSide : fromSide)
  const hair = Math.max(wide, high) / 90
  const about = t('The ruler: its {edge} and top edge are cut along; {size} under it.', {
    edge: right ? t('right') : t('left'),
    size: saySides(size, unit),
  })
  return (
    <svg viewBox={`${-4 * hair} ${-4 * hair} ${wide + 8 * hair} ${high + 8 * hair}`} role="img" aria-label={about}>
      <rect width={wide} height={high} fill="#fffaf2" stroke="#8a7a6d" strokeWidth={hair} strokeDasharray={`${3 * hair} ${2 * hair}`} />
      {seams.map(({ ends: [from, to] }) => (
        <line
          key={`${from.fromSide} ${from.fromTop} ${to.fromSide} ${to.fromTop}`}
          x1={x(from.fromSide)}
          y1={from.fromTop}
          x2={x(to.fromSide)}
          y2={to.fromTop}
          stroke="#2b2320"
          strokeWidth={hair}
        />
      ))}
      {points.map(({ what, at }) => (
        <circle key={`${what} ${at.fromSide} ${at.fromTop}`} cx={x(at.fromSide)} cy={at.fromTop} r={2.4 * hair} fill="#2a6f66" />
      ))}
      <path
        d={right ? `M0 0H${wide}V${high}` : `M${wide} 0H0V${high}`}
        fill="none"
        stroke="#8f3a1f"
        strokeWidth={2.6 * hair}
        strokeLinecap="square"
      />
    </svg>
  )
}

const LIES = [
  said('Lay it as it is'),
  said('Turn it a quarter to the right'),
  said('Turn it half round'),
  said('Turn it a quarter to the left'),
] as const

function cutWords({ turn, edges, size, points, seams }: RulerCut, unit: 'in' | 'cm'): string {
  const say = (length: number): string => `${sayLength(length, unit)} ${unit}`
  const edge = edges[0] === 'right' ? t('right') : t('left')
  const slanting = [...new Set(seams.filter(({ angle }) => angle % 90 > 1e-9).map(({ angle }) => Math.round(angle)))]
  const angles = slanting.map((angle) => t('{angle}° line on the slanting seam', { angle }))
  const tips = points
    .filter(({ what }) => what !== 'end')
    .map(({ what, at }) => {
      const place = { side: say(at.fromSide), edge, top: say(at.fromTop) }
      return what === 'tip'
        ? t('tip {side} from the {edge} edge and {top} from the top', place)
        : t('crossing {side} from the {edge} edge and {top} from the top', place)
    })
  const lies = t(LIES[turn])
  return t('{lies}; {lines}; cut the {edge} and the top, with {wide} by {high} still under the ruler.', {
    lies,
    lines: [...angles, ...tips].join(', '),
    edge,
    wide: say(size[0]),
    high: say(size[1]),
  })
}
