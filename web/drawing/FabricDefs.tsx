/**
 * Prints in SVG pictures: patterns to fill patches with, true to scale as on the board.
 *
 * In      the fabrics, how long one unit of the picture is in the block's unit of measure, the turns that prints lie in, and a prefix for the ids.
 * Out     the definitions, and the fill of a fabric.
 */
import { useId } from 'react'
import { type Block, cellOf, type Fabric, marksOf, parseLength, photoSize, type Print, toNumber } from '../../geometry/index.ts'
import { UNKNOWN_COLOUR } from './fabricParts.ts'

interface Props {
  readonly id: string
  readonly fabrics: readonly Fabric[]
  /** How long one unit of the picture is, in inches or centimetres. In a picture of a block it is a cell. */
  readonly unit: number
  readonly turns?: readonly number[]
}

const NO_TURN = [0] as const
/** All the turns that a print can lie in, in quarter turns: see `lieOf`. */
export const ALL_TURNS = [0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5] as const

export const cellLength = (block: Block): number => toNumber(cellOf(block))

export const svgFill = (id: string, fabric: Fabric | undefined, turn = 0): string =>
  fabric === undefined ? UNKNOWN_COLOUR : fabric.print === undefined ? fabric.colour : `url(#${id}${fabric.id}-${turn})`

export function FabricDefs({ id, fabrics, unit, turns = NO_TURN }: Props) {
  return (
    <defs>
      {fabrics.map((fabric) =>
        fabric.print === undefined ? null : (
          <PrintPatterns key={fabric.id} id={`${id}${fabric.id}-`} fabric={fabric} print={fabric.print} unit={unit} turns={turns} />
        ),
      )}
    </defs>
  )
}

interface PatternsProps {
  readonly id: string
  readonly fabric: Fabric
  readonly print: Print
  readonly unit: number
  readonly turns: readonly number[]
}

/** The largest and, inverted, the smallest repeat in cells. Beyond this nothing of the print can be seen, and a browser may reject the number. */
const MOST_CELLS = 1e6

/** One pattern with its marks; the turned patterns refer to it. */
function PrintPatterns({ id, fabric, print, unit, turns }: PatternsProps) {
  const length = parseLength(print.repeat)
  const wide = Math.min(MOST_CELLS, Math.max(1 / MOST_CELLS, (length === null ? 1 : toNumber(length)) / unit))
  const transform = (turn: number): string => `rotate(${turn * 90}) scale(${wide})`
  const [first = 0, ...others] = turns
  return (
    <>
      <PrintPattern id={`${id}${first}`} fabric={fabric} print={print} transform={transform(first)} />
      {others.map((turn) => (
        <pattern key={turn} id={`${id}${turn}`} href={`#${id}${first}`} patternTransform={transform(turn)} />
      ))}
    </>
  )
}

interface PatternProps {
  readonly id: string
  readonly fabric: Fabric
  readonly print: Print
  readonly transform: string
}

function PrintPattern({ id, fabric, print, transform }: PatternProps) {
  const size = print.photo === undefined ? null : photoSize(print.photo)
  const high = size === null ? 1 : size.height / size.width
  return (
    <pattern id={id} patternUnits="userSpaceOnUse" width={1} height={high} patternTransform={transform}>
      <rect width={1} height={high} fill={fabric.colour} />
      {print.kind === 'photo' && <image href={print.photo} width={1} height={high} preserveAspectRatio="none" />}
      {marksOf(fabric, print).map(({ mark, colour }) =>
        mark.type === 'disc' ? (
          <circle key={mark.at.join()} cx={mark.at[0]} cy={mark.at[1]} r={mark.radius} fill={colour} />
        ) : (
          <polygon key={mark.corners.join()} points={mark.corners.map((corner) => corner.join()).join(' ')} fill={colour} />
        ),
      )}
    </pattern>
  )
}

/** A small square of fabric: two inches or five centimetres of it, or one whole repeat if that is more. */
export function Swatch({ fabric, unit }: { readonly fabric: Fabric; readonly unit: 'in' | 'cm' }) {
  const id = useId()
  if (fabric.print === undefined) {
    return (
      <svg viewBox="0 0 1 1" className="cloth-swatch" preserveAspectRatio="none" aria-hidden="true">
        <rect width={1} height={1} fill={fabric.colour} />
      </svg>
    )
  }
  const repeat = parseLength(fabric.print.repeat)
  const side = Math.max(unit === 'in' ? 2 : 5, repeat === null ? 1 : toNumber(repeat))
  return (
    <svg viewBox={`0 0 ${side} ${side}`} className="cloth-swatch" preserveAspectRatio="xMidYMid slice" aria-hidden="true">
      <FabricDefs id={id} fabrics={[fabric]} unit={1} />
      <rect width={side} height={side} fill={svgFill(id, fabric)} />
    </svg>
  )
}
