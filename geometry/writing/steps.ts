/**
 * The making steps: cut, make the units, join them, add borders, quilt.
 *
 * In      a report and its block.
 * Out     steps with a title and lines; `stepsText` numbers them. Directions are as seen from the right side, the block the right way up.
 * Source  common practice; cautions from the handbook, section 12; pressing and nesting, section 5; ditch, section 11.
 */
import type { Block } from '../block/values.ts'
import type { Join, Meeting, Report, Stage, UnitRow } from '../values.ts'
import { cutListText, namesOf } from './cutList.ts'
import { type Piece, piecesOf, wayOf } from './pieces.ts'
import { type Bench, unitLines } from './unitSteps.ts'
import { capital, count, kindWords, listed, patchWords, sayOne, saySize } from './say.ts'

export interface Step {
  readonly title: string
  readonly lines: readonly string[]
}

export function stepsOf(report: Report, block: Block): Step[] {
  const bench: Bench = { unit: report.measure.unit, seam: sayOne(report.measure.seam, report.measure.unit), fabric: namesOf(block) }
  const pieces = piecesOf(report)
  return [
    BEFORE,
    cutting(report, block),
    ...making(report, bench),
    ...joining(report, pieces),
    ...bordering(report, pieces),
    ...quilting(report),
  ].filter(({ lines }) => lines.length > 0)
}

export function stepsText(steps: readonly Step[]): string {
  return `${steps.map(({ title, lines }, index) => [`${index + 1}. ${title}`, ...lines.map((line) => (line === '' ? '' : `   ${line}`))].join('\n')).join('\n\n')}\n`
}

const BEFORE: Step = {
  title: 'Before you begin',
  lines: [
    'Rotary cutter: stand, cut away from yourself along a ruler on a mat, fingers back from its edge; close the blade after every cut.',
    'Iron: dry hands, away from the steam; stand it on its heel, unplug it after use. Press by lifting, not by sliding.',
    'Needle: fingers beside the foot, take pins out before they reach it; switch the machine off to thread it or change the needle.',
    "Where the tool's own instructions or your teacher say otherwise, they are right. Keep blades and iron from children.",
  ],
}

function cutting(report: Report, block: Block): Step {
  if (report.cut.length === 0) return { title: 'Cut', lines: [] }
  return { title: 'Cut', lines: cutListText(report, block).trimEnd().split('\n') }
}

function making(report: Report, bench: Bench): Step[] {
  const seams = ownSeams(report)
  return report.units.map((row) => ({
    title: `Make ${row.count} ${kindWords(row.kind, row.count)}${row.hand === null ? '' : ` (${row.hand} hand)`}: ${row.for.join(', ')}`,
    lines: [...unitLines(row, bench), ...unitPressing(row, seams)],
  }))
}

interface OwnSeam {
  readonly between: string
  readonly toward: string
}

/** The seams inside each unit, with the patches on their two sides. */
function ownSeams(report: Report): ReadonlyMap<string, readonly OwnSeam[]> {
  const leaves = new Map(report.patches.map((patch) => [patch.id, { unit: patch.unit, names: [patch.name] }]))
  const seams = new Map<string, OwnSeam[]>()
  for (const join of report.joins) {
    if (join.stage !== 'unit') continue
    const [a, b] = join.sides.map((side) => leaves.get(side))
    if (a === undefined || b === undefined || a.unit === null) continue
    leaves.set(join.id, { unit: a.unit, names: [...a.names, ...b.names] })
    const sides = [a, b].map(({ names }) => names.map(patchWords).join(' with '))
    const toward = join.press.toward === 'open' ? 'open' : `toward ${sides[join.press.toward]}`
    seams.set(a.unit, [...(seams.get(a.unit) ?? []), { between: sides.join(' | '), toward }])
  }
  return seams
}

/** Units made alike may lie differently in the block, and want pressing differently: each way is said with its units. */
function unitPressing(row: UnitRow, seams: ReadonlyMap<string, readonly OwnSeam[]>): string[] {
  const ways = new Map<string, string[]>()
  for (const id of row.for) {
    const way = (seams.get(id) ?? []).map(({ between, toward }) => `${between}: ${toward}`).join('; ')
    if (way !== '') ways.set(way, [...(ways.get(way) ?? []), id])
  }
  return [...ways].map(([way, ids]) => (ways.size === 1 ? `Press each seam – ${way}.` : `Press each seam of ${listed(ids)} – ${way}.`))
}

const STAGE_TITLES: Readonly<Record<Exclude<Stage, 'unit' | 'border'>, string>> = {
  section: 'Join sections',
  row: 'Join rows',
  column: 'Join columns',
  block: 'Join the block',
}

function joining(report: Report, pieces: ReadonlyMap<string, Piece>): Step[] {
  const meetings = grouped(report.meetings)
  const stages = ['section', 'row', 'column', 'block'] as const
  return stages.map((stage) => ({
    title: STAGE_TITLES[stage],
    lines: report.joins.filter((join) => join.stage === stage).map((join) => joinLine(join, report, pieces, meetings.get(join.id) ?? [])),
  }))
}

function bordering(report: Report, pieces: ReadonlyMap<string, Piece>): Step[] {
  const joins = report.joins.filter((join) => join.stage === 'border')
  return [{ title: 'Add the borders, sides before top and bottom', lines: joins.map((join) => joinLine(join, report, pieces, [])) }]
}

function grouped(meetings: readonly Meeting[]): ReadonlyMap<string, readonly Meeting[]> {
  const byJoin = new Map<string, Meeting[]>()
  for (const meeting of meetings) {
    const known = byJoin.get(meeting.join)
    if (known === undefined) byJoin.set(meeting.join, [meeting])
    else known.push(meeting)
  }
  return byJoin
}

function joinLine(join: Join, report: Report, pieces: ReadonlyMap<string, Piece>, meetings: readonly Meeting[]): string {
  const [a, b] = join.sides.map((side) => pieces.get(side)?.name ?? side)
  const how = {
    straight: `Sew ${a} to ${b}`,
    partial: `Sew ${a} to ${b}, leaving the seam open at one end`,
    'set-in': `Set ${b} into ${a}, turning at each bend`,
  }[join.kind]
  const later = join.finishedAfter === undefined ? [] : [`finish it after ${join.finishedAfter}`]
  const size = join.unfinished === null ? [] : [`it measures ${saySize(join.unfinished, report.measure.unit)}`]
  return `${join.id} ${capital([how, ...later, ...matches(meetings), `press ${wayOf(join, pieces)}`, ...size].join('; '))}.`
}

/** What to look after along one join. */
function matches(meetings: readonly Meeting[]): string[] {
  const of = (verdict: Meeting['verdict']): number => meetings.filter((meeting) => meeting.verdict === verdict).length
  const say = (number: number, words: (number: number) => string): string[] => (number === 0 ? [] : [words(number)])
  return [
    ...say(of('nests'), (n) => `match ${count(n, 'nested seam')}`),
    ...say(of('clashes'), (n) => `pin ${count(n, 'pair')} of seams whose allowances lie the same way`),
    ...say(of('open'), (n) => `pin ${count(n, 'pair')} of seams, one pressed open`),
    ...say(of('pin'), (n) => `match ${count(n, 'point')} by pinning`),
    ...say(of('tip'), (n) => `sew across ${count(n, 'tip')} without cutting ${n === 1 ? 'it' : 'them'} off`),
  ]
}

/** A long route is told by its beginning; the report has it whole. */
const POINTS_TOLD = 60

function quilting({ ditch, measure }: Report): Step[] {
  const lines = ditch.routes.map(({ points, closed }, index) => {
    const told = points.slice(0, POINTS_TOLD).map(([x, y]) => `(${x}, ${y})`)
    const rest = points.length > POINTS_TOLD ? ` and ${points.length - POINTS_TOLD} points more` : ''
    return `Route ${index + 1}${closed ? ', back to its start' : ''}: ${told.join(' ')}${rest}`
  })
  if (lines.length === 0) return []
  const twice = ditch.retraced === 0 ? 'no seam is stitched twice' : `${sayOne(ditch.retraced, measure.unit)} of it is stitched twice`
  const head = [
    `Layer the top, batting and backing. Quilt in the ditch: ${sayOne(ditch.length, measure.unit)} in ${count(lines.length, 'line')}; ${twice}.`,
    'Stitch on the low side of each seam, away from its allowances; in the middle where it is pressed open. Secure both ends.',
    'Points are cells across and down from the top left of the block.',
  ]
  return [{ title: 'Quilt along the seams', lines: [...head, ...lines] }]
}
