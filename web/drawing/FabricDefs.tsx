/**
 * Prints in small pictures: patterns that an SVG fills its patches with, to the same scale as the board.
 *
 * In      fabrics, the length of one unit of the picture in the block's measure, the turns in which cloth lies, and a word that keeps ids apart.
 * Out     definitions, and the fill of a fabric by name.
 */
import { useId } from 'react'
import { type Block, cellOf, type Fabric, marksOf, parseLength, photoSize, type Print, toNumber } from '../../geometry/index.ts'

interface Props {
  readonly id: string
  readonly fabrics: readonly Fabric[]
  /** What one unit of the picture measures: of a block's picture, a cell. */
  readonly unit: number
  readonly turns?: readonly number[]
}

const STRAIGHT = [0] as const
/** All the ways in which cloth lies: `lieOf`. */
export const ALL_TURNS = [0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5] as const

export const cellLength = (block: Block): number => toNumber(cellOf(block))

export const svgFill = (id: string, fabric: Fabric | undefined, turn = 0): string =>
  fabric === undefined ? '#888888' : fabric.print === undefined ? fabric.colour : `url(#${id}${fabric.id}-${turn})`

export function FabricDefs({ id, fabrics, unit, turns = STRAIGHT }: Props) {
  return (
    <defs>
      {fabrics.map((fabric) =>
        fabric.print === undefined ? null : (
          <Repeat key={fabric.id} id={`${id}${fabric.id}-`} fabric={fabric} print={fabric.print} unit={unit} turns={turns} />
        ),
      )}
    </defs>
  )
}

interface RepeatProps {
  readonly id: string
  readonly fabric: Fabric
  readonly print: Print
  readonly unit: number
  readonly turns: readonly number[]
}

/** Cells to a repeat, or repeats to a cell: beyond this nothing of it is seen, and a browser may not take the number. */
const WIDEST = 1e6

/** One pattern with what is drawn; the turned ones draw the same. */
function Repeat({ id, fabric, print, unit, turns }: RepeatProps) {
  const length = parseLength(print.repeat)
  const wide = Math.min(WIDEST, Math.max(1 / WIDEST, (length === null ? 1 : toNumber(length)) / unit))
  const lies = (turn: number): string => `rotate(${turn * 90}) scale(${wide})`
  const [first = 0, ...others] = turns
  return (
    <>
      <Drawn id={`${id}${first}`} fabric={fabric} print={print} transform={lies(first)} />
      {others.map((turn) => (
        <pattern key={turn} id={`${id}${turn}`} href={`#${id}${first}`} patternTransform={lies(turn)} />
      ))}
    </>
  )
}

interface DrawnProps {
  readonly id: string
  readonly fabric: Fabric
  readonly print: Print
  readonly transform: string
}

function Drawn({ id, fabric, print, transform }: DrawnProps) {
  const size = print.photo === undefined ? null : photoSize(print.photo)
  const high = size === null ? 1 : size.height / size.width
  return (
    <pattern id={id} patternUnits="userSpaceOnUse" width={1} height={high} patternTransform={transform}>
      <rect width={1} height={high} fill={fabric.colour} />
      {print.kind === 'photo' && <image href={print.photo} width={1} height={high} preserveAspectRatio="none" />}
      {marksOf(fabric, print).map(({ mark, colour }) =>
        mark.sort === 'disc' ? (
          <circle key={mark.at.join()} cx={mark.at[0]} cy={mark.at[1]} r={mark.radius} fill={colour} />
        ) : (
          <polygon key={mark.corners.join()} points={mark.corners.map((corner) => corner.join()).join(' ')} fill={colour} />
        ),
      )}
    </pattern>
  )
}

/** A square of cloth: two inches or five centimetres of it, or one whole repeat where that is more. */
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
