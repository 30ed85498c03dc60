/** The seams that join the places, in sewing order: what is joined, how long, its strips, what to mark, which way to press. The one that is opened is drawn on the quilt. */
import { placeSize, type Quilt, type QuiltReport } from '../../../geometry/index.ts'
import { sayOneSize, saySides } from '../../words/sizes.ts'
import { t, tn } from '../../words/words.ts'
import { cellName } from '../quiltActions.ts'
import { setQuiltView, useQuiltView } from '../quiltView.ts'
import { useQuiltReport } from '../useQuiltReport.ts'

type Joint = QuiltReport['joints'][number]

/** Seams that are listed at most. */
const MOST_LISTED = 120

export function JointSteps({ quilt }: { readonly quilt: Quilt }) {
  const { report, of } = useQuiltReport()
  const opened = useQuiltView((view) => view.joint)
  if (report === null || report.joints.length === 0) return null
  const { unit } = quilt.measure
  return (
    <section aria-labelledby="joints-title">
      <h2 id="joints-title">{t('Joining order')}</h2>
      <p className="hint">
        {tn(report.joints.length, 'One seam joins the positions.', '{n} seams join the positions.')}{' '}
        {t('The longest is {length}.', { length: sayOneSize(report.machineLong, unit) })}
      </p>
      <ol className="moves joints">
        {report.joints.slice(0, MOST_LISTED).map((joint, index) => (
          <li key={joint.id}>
            <button
              type="button"
              className="plain"
              aria-expanded={opened === index}
              onClick={() => setQuiltView({ joint: opened === index ? null : index })}
            >
              {jointWords(quilt, report.joints, joint)}, {sayOneSize(joint.length, unit)}
            </button>
            {opened === index && of === quilt && <JointDetails joint={joint} unit={unit} />}
          </li>
        ))}
      </ol>
      {report.joints.length > MOST_LISTED && <p className="hint">{t('And {n} more, in the same way.', { n: report.joints.length - MOST_LISTED })}</p>}
    </section>
  )
}

/** Cells: left, top, right, bottom; the last two beyond. */
type Box = readonly [number, number, number, number]

/** The cells that a side of a seam covers: a place, or all that an earlier seam joined. */
function boxOf(quilt: Quilt, joints: readonly Joint[], side: string): Box {
  const place = quilt.places.find(({ id }) => id === side)
  if (place !== undefined) {
    const [wide, high] = placeSize(place)
    return [place.at[0], place.at[1], place.at[0] + wide, place.at[1] + high]
  }
  const joint = joints.find(({ id }) => id === side)
  if (joint === undefined) return [0, 0, 0, 0]
  const [one, other] = joint.sides.map((each) => boxOf(quilt, joints, each)) as [Box, Box]
  return [Math.min(one[0], other[0]), Math.min(one[1], other[1]), Math.max(one[2], other[2]), Math.max(one[3], other[3])]
}

/** Both sides as one points at them: a place, whole rows or columns, or a section. */
function jointWords(quilt: Quilt, joints: readonly Joint[], { sides }: Joint): string {
  const [one, other] = sides.map((side) => boxWords(quilt, boxOf(quilt, joints, side)))
  return capitalise(t('{one} to {other}', { one: one ?? '', other: other ?? '' }))
}

function boxWords({ grid }: Quilt, [left, top, right, bottom]: Box): string {
  const [wide, high] = [right - left === grid.columns, bottom - top === grid.rows]
  if (wide) return bottom - top === 1 ? t('row {n}', { n: bottom }) : t('rows {n} to {m}', { n: top + 1, m: bottom })
  if (high) return right - left === 1 ? t('column {n}', { n: right }) : t('columns {n} to {m}', { n: left + 1, m: right })
  if (right - left === 1 && bottom - top === 1) return cellName([left, top])
  if (bottom - top === 1) return t('columns {n} to {m} of row {row}', { n: left + 1, m: right, row: bottom })
  if (right - left === 1) return t('rows {n} to {m} of column {column}', { n: top + 1, m: bottom, column: right })
  return t('columns {n} to {m}, rows {r} to {s}', { n: left + 1, m: right, r: top + 1, s: bottom })
}

const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

function JointDetails({ joint, unit }: { readonly joint: Joint; readonly unit: 'in' | 'cm' }) {
  const upright = joint.from[0] === joint.to[0]
  const strip = joint.strip as Readonly<Record<string, unknown>> | null
  const lines = [
    ...stripWords(strip, unit),
    ...(joint.marks.length === 0
      ? []
      : [t('Mark both long edges at {marks}: these must come level.', { marks: joint.marks.map((mark) => sayOneSize(mark, unit)).join(', ') })]),
    ...(joint.press === null ? [] : [t('Press {way}.', { way: PRESSED[upright ? 'upright' : 'flat'][joint.press === 0 ? 0 : 1]() })]),
    t('{length} lies under the machine’s arm.', { length: sayOneSize(joint.underArm, unit) }),
  ]
  return (
    <ul className="joint-details">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}

const PRESSED = {
  upright: [() => t('to the left'), () => t('to the right')],
  flat: [() => t('up'), () => t('down')],
} as const

type Size = readonly [number, number]

function stripWords(strip: Readonly<Record<string, unknown>> | null, unit: 'in' | 'cm'): string[] {
  if (strip === null) return []
  const { front, cover, coverIs, batting, sash, corners } = strip as {
    front?: Size
    cover?: Size
    coverIs?: string
    batting?: Size | null
    sash?: readonly Size[]
    corners?: number
  }
  return [
    ...(front === undefined ? [] : [t('Strip in front: {size}', { size: saySides(front, unit) })]),
    ...(cover === undefined
      ? []
      : [
          coverIs === 'folded'
            ? t('Cover strip behind: {size}, folded double', { size: saySides(cover, unit) })
            : t('Cover strip behind: {size}', { size: saySides(cover, unit) }),
        ]),
    ...(batting == null ? [] : [t('Batting between: {size}', { size: saySides(batting, unit) })]),
    ...(sash === undefined ? [] : [t('Sash: {sizes}', { sizes: sash.map((size) => saySides(size, unit)).join(', ') })]),
    ...(corners === undefined || corners === 0 ? [] : [tn(corners, 'One corner square', '{n} corner squares')]),
  ]
}
