/** What the hand holds, on a layer of its own: chosen outlines, ghosts, the drawn box, the cursor, the handles, and the marks. */
import { Circle, Group, Layer, Line as KonvaLine, Path, Rect as KonvaRect } from 'react-konva'
import type { Block, Meeting } from '../../geometry/index.ts'
import { MARKS } from './marks.ts'
import type { Frame } from './place.ts'
import type { Outline } from './useOutlines.ts'
import { type Piece, type Rect, type Spot, spot } from './shapes.ts'

export interface Handles {
  readonly turn: Spot
  readonly mirror: Spot
}

/** Pixels: the reach of a handle or a mark. */
export const REACH = 16

/** In pixels, above the chosen units. */
export function handlesOf(frame: Frame, box: Rect | null): Handles | null {
  if (box === null) return null
  const [x0, y0] = frame.toPixels(...box.at)
  const [x1] = frame.toPixels(box.at[0] + box.size[0], box.at[1])
  const middle = (x0 + x1) / 2
  const top = Math.max(20, y0 - 24)
  return { turn: [middle - 20, top], mirror: [middle + 20, top] }
}

interface Props {
  readonly block: Block
  readonly frame: Frame
  /** Outlines of gaps, overlaps and cloth beyond the grid. */
  readonly faults: readonly Outline[]
  readonly chosen: readonly Rect[]
  readonly handles: Handles | null
  readonly ghost: { readonly pieces: readonly Piece[]; readonly fits: boolean } | null
  readonly drawn: { readonly from: Spot; readonly to: Spot } | null
  readonly cursor: Spot | null
  readonly patch: readonly Spot[] | null
  readonly meetings: readonly Meeting[]
  readonly finding: Spot | null
  /** Seams that decide one another, drawn while one of their meetings is pointed at. */
  readonly ring: readonly (readonly Spot[])[]
  readonly ink: string
  readonly paper: string
}

/** Two pairs may meet at one point: the one that clashes is the one to see. */
const clashesLast = (meetings: readonly Meeting[]): readonly Meeting[] =>
  [...meetings].sort((a, b) => Number(a.verdict === 'clashes') - Number(b.verdict === 'clashes'))

export function Held({ block, frame, faults, chosen, handles, ghost, drawn, cursor, patch, meetings, finding, ring, ink, paper }: Props) {
  const colours = new Map(block.fabrics.map(({ id, colour }) => [id, colour]))
  const flat = (corners: readonly Spot[]): number[] => corners.flatMap(([x, y]) => frame.toPixels(x, y))
  const rect = ({ at, size }: Rect): number[] => flat([at, [at[0] + size[0], at[1]], [at[0] + size[0], at[1] + size[1]], [at[0], at[1] + size[1]]])
  return (
    <Layer listening={false}>
      {faults.map(({ sort, ring }) => (
        <KonvaLine
          key={`${sort} ${ring.join()}`}
          points={flat(ring)}
          closed
          {...(sort === 'gap' ? {} : { fill: 'rgb(194 47 61 / 0.28)' })}
          stroke="#c22f3d"
          strokeWidth={2}
          dash={sort === 'gap' ? [2, 6] : [8, 4]}
          lineCap="round"
        />
      ))}
      {chosen.map((one) => (
        <KonvaLine key={one.at.join()} points={rect(one)} closed stroke={paper} strokeWidth={5} />
      ))}
      {chosen.map((one) => (
        <KonvaLine key={one.at.join()} points={rect(one)} closed stroke={ink} strokeWidth={2.5} dash={[9, 4]} />
      ))}
      {patch && <KonvaLine points={flat(patch)} closed stroke={ink} strokeWidth={2.5} />}
      {ring.map((points) => (
        <KonvaLine key={`ring ${points.join()}`} points={flat(points)} stroke="#c22f3d" strokeWidth={14} opacity={0.42} lineCap="round" />
      ))}
      {clashesLast(meetings).map(({ at, verdict, join, seams }) => {
        const [x, y] = frame.toPixels(...spot(at))
        return (
          <Path
            key={`${join} ${seams.join()} ${at.join()}`}
            x={x}
            y={y}
            data={MARKS[verdict].path}
            fill={MARKS[verdict].fill}
            stroke={paper}
            strokeWidth={2}
            fillAfterStrokeEnabled
          />
        )
      })}
      {ghost?.pieces.map(({ name, fabric, corners }) => (
        <KonvaLine
          key={`${name} ${corners.join()}`}
          points={flat(corners)}
          closed
          fill={colours.get(fabric) ?? '#888888'}
          opacity={0.72}
          stroke={ghost.fits ? '#2f7d6b' : '#c22f3d'}
          strokeWidth={3}
          dash={ghost.fits ? [] : [7, 5]}
        />
      ))}
      {drawn && (
        <KonvaRect
          x={drawn.from[0]}
          y={drawn.from[1]}
          width={drawn.to[0] - drawn.from[0]}
          height={drawn.to[1] - drawn.from[1]}
          stroke={ink}
          dash={[4, 4]}
          strokeWidth={1.5}
        />
      )}
      {cursor && <KonvaLine points={rect({ at: cursor, size: [1, 1] })} closed stroke={ink} strokeWidth={3} dash={[2, 5]} lineCap="round" />}
      {finding && <Circle x={frame.toPixels(...finding)[0]} y={frame.toPixels(...finding)[1]} radius={20} stroke={ink} strokeWidth={3} />}
      {handles && (
        <>
          <Group x={handles.turn[0]} y={handles.turn[1]}>
            <Circle radius={15} fill={paper} stroke={ink} strokeWidth={1.5} />
            <Path data="M-6 2A6 6 0 1 1 1 6M1 2L1 10L7 6Z" stroke={ink} strokeWidth={1.8} fill="" />
          </Group>
          <Group x={handles.mirror[0]} y={handles.mirror[1]}>
            <Circle radius={15} fill={paper} stroke={ink} strokeWidth={1.5} />
            <Path data="M0 -8V8M-3 -5L-9 4H-3ZM3 -5L9 4H3Z" stroke={ink} strokeWidth={1.6} fill="" />
          </Group>
        </>
      )}
    </Layer>
  )
}
