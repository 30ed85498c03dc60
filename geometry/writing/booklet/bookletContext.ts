/**
 * What every step of a booklet is written and drawn from.
 *
 * In      a report and its block.
 * Out     patches with their corners in the measure's unit, joins and meetings by their ids, the fabrics' names; and a letter for each
 *         different unit, as it stands in the layout picture: `A`; or `B1`, `B2` where units made alike differ in look or in pressing.
 * Exact   pictures only: places are doubles here and decide nothing.
 */
import { cellOf } from '../../block/lengthsOf.ts'
import type { Block, MeasureUnit, Size, Unit } from '../../values/block.ts'
import { toNumber } from '../../exact/rational.ts'
import { viewOf } from '../../units/unitPicture.ts'
import type { Join, Meeting, Report, ReportPoint, UnitRow } from '../../values/report.ts'
import { type BookletLanguage, type BookletPhrases, bookletWords } from '../../words/booklet/bookletWords.ts'
import { letterAt, sayExact, sayOne, saySize } from '../phrases.ts'
import { inCells } from '../pieceNames.ts'
import { sanitiseLine } from '../sanitiseText.ts'
import type { Spot } from './values.ts'

export interface MeasuredPatch {
  readonly id: string
  readonly unit: string | null
  readonly name: string
  readonly fabric: string
  /** Clockwise, in the measure's unit. */
  readonly corners: readonly Spot[]
}

/** A seam inside a unit: the patches on its two sides, by name, and the side it is pressed to. */
export interface UnitSeam {
  readonly join: string
  readonly sides: readonly [readonly string[], readonly string[]]
  readonly toward: 0 | 1 | 'open'
}

/** Units of one row that look alike and are pressed alike. */
export interface UnitVariant {
  readonly label: string
  readonly row: UnitRow
  readonly first: Unit
  /** Those of one block. */
  readonly units: readonly string[]
  /** How many are made, for all blocks. */
  readonly count: number
  readonly seams: readonly UnitSeam[]
}

export interface BookletContext {
  readonly say: BookletPhrases
  /** Numbers as the language writes them: `7,5 cm`. */
  readonly local: (said: string) => string
  /** A length, the nearest on a ruler; a length as it is; a size. */
  readonly one: (length: number) => string
  readonly exact: (length: number) => string
  readonly size: (size: Size) => string
  readonly report: Report
  readonly block: Block
  readonly unit: MeasureUnit
  readonly seam: number
  readonly seamText: string
  readonly cell: number
  readonly fabric: (id: string) => string
  readonly colour: (id: string) => string
  readonly patches: ReadonlyMap<string, MeasuredPatch>
  readonly joins: ReadonlyMap<string, Join>
  readonly meetings: ReadonlyMap<string, readonly Meeting[]>
  readonly usedBy: ReadonlyMap<string, Join>
  /** The joins inside each unit, by the unit's id. */
  readonly unitJoins: ReadonlyMap<string, readonly string[]>
  readonly variants: readonly UnitVariant[]
  readonly variantOf: ReadonlyMap<string, UnitVariant>
  /** The letter of all units of a row of the report. */
  readonly letterOf: (row: UnitRow) => string
}

/** What all steps share, derived once from a report and its block. */
export function bookletContext(report: Report, block: Block, language: BookletLanguage = 'en'): BookletContext {
  const cell = toNumber(cellOf(block))
  const { unit, seam } = report.measure
  const fabrics = new Map(block.fabrics.map((fabric) => [fabric.id, fabric]))
  const place = placer(cell)
  const seams = unitSeams(report)
  const variants = variantsOf(report, block, seams)
  const say = bookletWords(language)
  return {
    say,
    ...saidIn(say, unit),
    report,
    block,
    unit,
    seam,
    seamText: saidIn(say, unit).exact(seam),
    cell,
    fabric: (id) => oneLine(fabrics.get(id)?.name ?? id),
    colour: (id) => fabrics.get(id)?.colour ?? '#888888',
    patches: new Map(
      report.patches.map(({ id, unit: of, name, fabric, corners }) => [id, { id, unit: of, name, fabric, corners: corners.map(place) }]),
    ),
    joins: new Map(report.joins.map((join) => [join.id, join])),
    meetings: grouped(report.meetings, ({ join }) => join),
    usedBy: new Map(report.joins.flatMap((join) => join.sides.map((side) => [side, join] as const))),
    unitJoins: new Map([...seams].map(([id, own]) => [id, own.map(({ join }) => join)])),
    variants,
    variantOf: new Map(variants.flatMap((variant) => variant.units.map((id) => [id, variant] as const))),
    letterOf: (row) => letterAt(report.units.indexOf(row)),
  }
}

/** Lengths and sizes as a language says them. */
function saidIn({ language, about }: BookletPhrases, unit: MeasureUnit): Pick<BookletContext, 'local' | 'one' | 'exact' | 'size'> {
  const local = (said: string): string => (language === 'de' ? said.replace(/(\d)\.(\d)/g, '$1,$2') : said)
  return {
    local,
    one: (length) => local(sayOne(length, unit)),
    exact: (length) => local(sayExact(length, unit)),
    size: (size) => local(saySize(size, unit, about)),
  }
}

/** A name as it stands in a sentence. */
export const oneLine = (name: string): string => sanitiseLine(name) || 'unnamed'

const placer =
  (cell: number) =>
  ([x, y]: ReportPoint): Spot => [inCells(x) * cell, inCells(y) * cell]

/** A place of the report in the measure's unit. */
export const spotOf = (context: BookletContext, at: ReportPoint): Spot => placer(context.cell)(at)

/** Items by a key, groups and items in the order in which they came. */
export function grouped<RunItem>(items: readonly RunItem[], by: (item: RunItem) => string): Map<string, RunItem[]> {
  const groups = new Map<string, RunItem[]>()
  for (const item of items) {
    const key = by(item)
    const there = groups.get(key)
    if (there === undefined) groups.set(key, [item])
    else there.push(item)
  }
  return groups
}

/** The patches of a piece: a patch, or what a join has made. */
export function patchesIn(context: BookletContext, piece: string): MeasuredPatch[] {
  const found: MeasuredPatch[] = []
  const left = [piece]
  while (left.length > 0) {
    const id = left.pop() as string
    const patch = context.patches.get(id)
    if (patch !== undefined) found.push(patch)
    else left.push(...[...(context.joins.get(id)?.sides ?? [])].reverse())
  }
  return found
}

/** The joins inside a piece, in sewing order. */
export function joinsIn(context: BookletContext, piece: string): Join[] {
  const found: Join[] = []
  const left = [piece]
  while (left.length > 0) {
    const join = context.joins.get(left.pop() as string)
    if (join === undefined) continue
    found.push(join)
    left.push(...join.sides)
  }
  return found.sort((a, b) => Number(a.id.slice(2)) - Number(b.id.slice(2)))
}

function variantsOf(report: Report, block: Block, seams: ReadonlyMap<string, readonly UnitSeam[]>): UnitVariant[] {
  const units = new Map(block.units.map((unit) => [unit.id, unit]))
  return report.units.flatMap((row, place) => {
    const pictures = new Map<string, string>()
    const groups = grouped(row.for, (id) => variantKey(units.get(id) as Unit, row, seams.get(id) ?? [], pictures))
    return [...groups.values()].map((ids, index): UnitVariant => {
      const number = groups.size > 1 ? String(index + 1) : ''
      return {
        label: `${letterAt(place)}${number}`,
        row,
        first: units.get(ids[0] as string) as Unit,
        units: [...new Set(ids)],
        count: ids.length,
        seams: seams.get(ids[0] as string) ?? [],
      }
    })
  })
}

/** A unit that its method cannot make has no letter: what is wrong with it stands on the first page. */
export const NO_METHOD = '?'

/** All units of a row are one picture however turned, but for geese made four at a time, whose wings may differ. */
function variantKey(unit: Unit, row: UnitRow, seams: readonly UnitSeam[], pictures: Map<string, string>): string {
  const names = (side: readonly string[]): string => side.map((name) => `${row.kind === 'goose' ? '' : unit.fabrics[name]}`).join('+')
  const pressed = seams.map(({ sides, toward }) => (toward === 'open' ? 'open' : `${names(sides[toward])}${row.kind === 'goose' ? toward : ''}`))
  const wings = row.kind === 'goose' ? wingsSeen(unit, pictures) : ''
  return JSON.stringify([pressed, wings])
}

function wingsSeen(unit: Unit, pictures: Map<string, string>): string {
  const known = JSON.stringify([unit.kind === 'polygon' ? '' : [unit.turn ?? 0, unit.mirror === true, unit.size], unit.fabrics])
  const seen = pictures.get(known) ?? ([0, 1, 2, 3] as const).map((turn) => viewOf(unit, turn)).sort()[0]
  pictures.set(known, seen as string)
  return seen as string
}

/** The seams inside each unit, in sewing order. */
function unitSeams(report: Report): ReadonlyMap<string, readonly UnitSeam[]> {
  const names = new Map(report.patches.map((patch) => [patch.id, { unit: patch.unit, names: [patch.name] }]))
  const seams = new Map<string, UnitSeam[]>()
  for (const join of report.joins) {
    if (join.stage !== 'unit') continue
    const [a, b] = join.sides.map((side) => names.get(side))
    if (a === undefined || b === undefined || a.unit === null) continue
    names.set(join.id, { unit: a.unit, names: [...a.names, ...b.names] })
    const seam: UnitSeam = { join: join.id, sides: [a.names, b.names], toward: join.press.toward }
    const there = seams.get(a.unit)
    if (there === undefined) seams.set(a.unit, [seam])
    else there.push(seam)
  }
  return seams
}
