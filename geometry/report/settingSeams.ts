/**
 * The seams between the copies of a setting, and what meets on them.
 *
 * In      the edges of one block, and how each copy is turned and pressed. Copies of a row are joined from left to right by short seams, rows from the
 *         top down by long ones.
 * Out     joins in sewing order and meetings, positions in cells of the whole setting.
 */
import { add, compare, multiply, type Rational, rational, subtract, toFile } from '../exact/rational.ts'
import type { EdgeTouch } from '../neighbours/blocksSideBySide.ts'
import type { ShownEdges } from '../neighbours/looseEnds.ts'
import { across, type ChosenSetting, type CopyState, down, passedAt } from '../neighbours/setting.ts'
import type { ReportPoint, Verdict } from '../values/report.ts'

export interface SettingJoin {
  readonly id: string
  readonly stage: 'row' | 'block'
  readonly from: ReportPoint
  readonly to: ReportPoint
  /** Copies (`b:column.row`) or earlier seams of the setting. */
  readonly sides: readonly [string, string]
  readonly press: { readonly toward: 0 | 1; readonly rule: 'meeting' | 'preference' | 'none' }
}

export interface SettingMeeting {
  readonly at: ReportPoint
  readonly join: string
  /** Seams of copies as `b:column.row/j:n`, seams of the setting by their id. */
  readonly seams: readonly string[]
  readonly verdict: Verdict
}

interface SettingSeams {
  readonly joins: readonly SettingJoin[]
  readonly meetings: readonly SettingMeeting[]
}

/** All short seams row by row, then the long seams from the top down. */
export function seamsBetweenCopies(shown: ShownEdges, { columns, rows, states }: ChosenSetting): SettingSeams {
  const setting: Setting = { shown, columns, rows, state: (column, row) => states[row * columns + column] as CopyState }
  const parts = [shortSeams(setting), ...Array.from({ length: Math.max(0, rows - 1) }, (_, row) => longSeam(setting, row))]
  return { joins: parts.flatMap(({ joins }) => joins), meetings: parts.flatMap(({ meetings }) => meetings) }
}

interface Setting {
  readonly shown: ShownEdges
  readonly columns: number
  readonly rows: number
  readonly state: (column: number, row: number) => CopyState
}

const times = (length: Rational, count: number): Rational => multiply(length, rational(count))
const point = (x: Rational, y: Rational): ReportPoint => [toFile(x), toFile(y)]

const copyId = (column: number, row: number): string => `b:${column}.${row}`
const shortId = ({ columns }: Setting, column: number, row: number): string => `s:${row * (columns - 1) + column + 1}`
const longId = ({ columns, rows }: Setting, row: number): string => `s:${rows * (columns - 1) + row + 1}`
/** A whole row: its last short seam, or its only copy. */
const rowId = (setting: Setting, row: number): string => (setting.columns === 1 ? copyId(0, row) : shortId(setting, setting.columns - 2, row))
const seamIds = (column: number, row: number, seams: readonly number[]): string[] => seams.map((seam) => `${copyId(column, row)}/j:${seam + 1}`)

function shortSeams(setting: Setting): SettingSeams {
  const { shown, columns, rows, state } = setting
  const touches = (column: number, row: number): EdgeTouch[] => across(state(column, row), state(column + 1, row))
  const press = shortPresses(columns, rows, touches)
  const joins: SettingJoin[] = []
  const meetings: SettingMeeting[] = []
  for (let row = 0; row < rows; row++)
    for (let column = 0; column + 1 < columns; column++) {
      const [x, top, id] = [times(shown.width, column + 1), times(shown.height, row), shortId(setting, column, row)]
      joins.push({
        id,
        stage: 'row',
        from: point(x, top),
        to: point(x, add(top, shown.height)),
        sides: [column === 0 ? copyId(0, row) : shortId(setting, column - 1, row), copyId(column + 1, row)],
        press: press(column, row),
      })
      for (const { place, near, far, verdict } of touches(column, row))
        if (verdict !== 'alone')
          meetings.push({
            at: point(x, add(top, place)),
            join: id,
            seams: [...seamIds(column, row, near), ...seamIds(column + 1, row, far)],
            verdict,
          })
    }
  return { joins, meetings }
}

/** The long seam below a row; its meetings from the right, as they lie clockwise on the blocks above. */
function longSeam(setting: Setting, row: number): SettingSeams {
  const { shown, columns, state } = setting
  const [y, id] = [times(shown.height, row + 1), longId(setting, row)]
  const meetings: SettingMeeting[] = []
  let [above, below] = [0, 0]
  for (let column = columns - 1; column >= 0; column--) {
    const corner = times(shown.width, column + 1)
    if (column + 1 < columns)
      meetings.push({ at: point(corner, y), join: id, seams: [shortId(setting, column, row), shortId(setting, column, row + 1)], verdict: 'nests' })
    for (const { place, near, far, verdict } of down(state(column, row), state(column, row + 1), passedAt(column, columns))) {
      above += near.length
      below += far.length
      const atCorner = place.n === 0n || compare(place, shown.width) === 0
      // At a corner the short seams are a pair already: only other pairs meet there.
      if (verdict === 'alone' || (atCorner && (verdict === 'pin' || verdict === 'tip'))) continue
      const seams = [...seamIds(column, row, near), ...seamIds(column, row + 1, far)]
      meetings.push({ at: point(subtract(corner, place), y), join: id, seams, verdict })
    }
  }
  const join: SettingJoin = {
    id,
    stage: 'block',
    from: point(rational(0), y),
    to: point(times(shown.width, columns), y),
    sides: [row === 0 ? rowId(setting, 0) : longId(setting, row - 1), rowId(setting, row + 1)],
    press: above === below ? { toward: 0, rule: 'none' } : { toward: above < below ? 0 : 1, rule: 'preference' },
  }
  return { joins: [join], meetings }
}

/** Short seams one above the other are pressed by turns left and right; the seam ends inside them decide which way comes first. */
function shortPresses(
  columns: number,
  rows: number,
  touches: (column: number, row: number) => readonly EdgeTouch[],
): (column: number, row: number) => SettingJoin['press'] {
  const wanted = Array.from({ length: Math.max(0, columns - 1) }, (_, column) =>
    Array.from({ length: rows }, (_, row) => {
      const more = touches(column, row).reduce((sum, { near, far }) => sum + near.length - far.length, 0)
      return more === 0 ? null : more < 0 ? 0 : 1
    }),
  )
  const first = wanted.map((ways) => {
    const against = [0, 1].map((start) => ways.filter((way, row) => way !== null && way !== (start + row) % 2).length)
    return (against[0] as number) <= (against[1] as number) ? 0 : 1
  })
  return (column, row) => {
    const toward = (((first[column] as number) + row) % 2) as 0 | 1
    const way = wanted[column]?.[row]
    return { toward, rule: rows > 1 ? 'meeting' : way === toward ? 'preference' : 'none' }
  }
}
