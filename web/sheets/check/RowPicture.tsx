/** One row or column drawn apart: its pieces with a little room between them, and across each seam its pressing arrow, which can be pressed. */
import { useMemo } from 'react'
import { type Block, type Findings, flatColour, type Patch, type PressLine } from '../../../geometry/index.ts'
import { PressButton } from '../../board/pressing/PressButton.tsx'
import { type Point, pointOf } from '../../document/shapes.ts'
import { setView } from '../../document/store.ts'
import { t } from '../../words/words.ts'

interface Props {
  readonly block: Block
  readonly report: Findings
  readonly line: PressLine
}

/** Pixels: how wide a row is drawn at most, how large a cell, and the room between two pieces. */
const WIDEST = 286
const LARGEST_CELL = 56
const GAP = 8
/** With more patches than this, a picture so small shows nothing. */
const MOST_PATCHES = 120

export function RowPicture({ block, report, line }: Props) {
  // So small a picture shows no prints.
  const colours = useMemo(() => new Map(block.fabrics.map((fabric) => [fabric.id, flatColour(fabric)])), [block.fabrics])
  const { patches, low, high } = useMemo(() => rowPatches(report, line), [report, line])
  if (line.seams.length === 0 || patches.length > MOST_PATCHES) return null
  const along = line.line === 'row' ? 0 : 1
  const room = (line.pieces.length - 1) * GAP
  const scale = Math.min(LARGEST_CELL, (WIDEST - room) / (high[along] - low[along]))
  const gap = GAP / scale
  const moved = ([x, y]: Point, piece: number): Point => (along === 0 ? [x + piece * gap, y] : [x, y + piece * gap])
  const size = ([0, 1] as const).map((axis) => high[axis] - low[axis] + (axis === along ? room / scale : 0)) as [number, number]
  return (
    <div className="row-picture" style={{ width: size[0] * scale, aspectRatio: `${size[0]} / ${size[1]}` }}>
      <svg viewBox={`${low[0]} ${low[1]} ${size[0]} ${size[1]}`} aria-hidden="true">
        {patches.map(({ patch, outline, piece }) => (
          <polygon
            key={patch.id}
            points={outline.map((point) => moved(point, piece).join()).join(' ')}
            fill={colours.get(patch.fabric)}
            stroke="#2b2320"
            strokeWidth={1 / scale}
            strokeOpacity="0.6"
          />
        ))}
      </svg>
      {line.seams.map(({ join, middle }, index) => {
        const [x, y] = moved(middle, index + 0.5)
        return (
          <PressButton
            key={join.id}
            report={report}
            join={join}
            name={seamName(line, index + 1)}
            style={{ left: `${((x - low[0]) / size[0]) * 100}%`, top: `${((y - low[1]) / size[1]) * 100}%` }}
            onPoint={() => setView({ finding: `join ${report.joins.indexOf(join)}` })}
          />
        )
      })}
    </div>
  )
}

const seamName = ({ line, number }: PressLine, seam: number): string =>
  line === 'row' ? t('Row {number}, seam {seam}', { number, seam }) : t('Column {number}, seam {seam}', { number, seam })

interface PlacedPatch {
  readonly patch: Patch
  readonly outline: readonly Point[]
  /** The place of its piece in the row. */
  readonly piece: number
}

function rowPatches({ patches, joins }: Findings, { pieces }: PressLine): { patches: PlacedPatch[]; low: Point; high: Point } {
  const [byId, made] = [new Map(patches.map((patch) => [patch.id, patch])), new Map(joins.map((join) => [join.id, join]))]
  const within = (id: string): Patch[] => {
    const patch = byId.get(id)
    return patch === undefined ? (made.get(id)?.sides ?? []).flatMap(within) : [patch]
  }
  const placed = pieces.flatMap((id, piece) => within(id).map((patch): PlacedPatch => ({ patch, outline: patch.corners.map(pointOf), piece })))
  const corners = placed.flatMap(({ outline }) => outline)
  const ends = (axis: 0 | 1): number[] => corners.map((corner) => corner[axis])
  return {
    patches: placed,
    low: [Math.min(...ends(0)), Math.min(...ends(1))],
    high: [Math.max(...ends(0)), Math.max(...ends(1))],
  }
}
