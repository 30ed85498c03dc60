/**
 * Read a block file: the document, or the one place that is wrong with it.
 *
 * In      text, or a value that came out of JSON.
 * Out     the block as it is written (unknown fields stay), or the place and one sentence that says what to do there.
 * Exact   a crossed polygon, a denominator too great and corners that overlap are found with whole numbers.
 */
import { add, compare, lcm, multiply, parseRational, type Rational, rational, subtract } from '../exact/rational.ts'
import { KIND_FACTS, type KindFacts } from '../units/kinds.ts'
import { type Block, type Kind, KINDS, METHODS, ORDERS, type Read } from './values.ts'

/** Positions in one file share a denominator of at most this: 11 · 7 · 5 · 9 · 16, every fraction a maker meets. */
export const MOST_PARTS = 55_440n
export const FARTHEST = 10_000
export const MOST_UNITS = 100_000

const CORNERS = ['topLeft', 'topRight', 'bottomRight', 'bottomLeft'] as const

class Bad extends Error {
  readonly place: string
  constructor(place: string, message: string) {
    super(message)
    this.place = place
  }
}

export function readBlock(text: string): Read<Block> {
  let value: unknown
  try {
    value = JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text)
  } catch {
    return { ok: false, place: 'file', message: 'this is not a block file: it is not JSON; choose a file that Nestwright saved' }
  }
  return checkBlock(value)
}

export function checkBlock(value: unknown): Read<Block> {
  try {
    new Reader().block(value)
    return { ok: true, value: value as Block }
  } catch (error) {
    if (error instanceof Bad) return { ok: false, place: error.place, message: error.message }
    throw error
  }
}

/** The block as a file, to be read again: unknown fields are kept. */
export const writeBlock = (block: Block): string => `${JSON.stringify(block, null, 2)}\n`

type Fields = Readonly<Record<string, unknown>>
type Exact = readonly [Rational, Rational]

const shown = (value: unknown): string => {
  if (typeof value === 'object' && value !== null)
    return Array.isArray(value) && value.length <= 4 && value.every((item) => typeof item !== 'object')
      ? JSON.stringify(value)
      : Array.isArray(value)
        ? 'a list'
        : 'an object'
  const text = value === undefined ? 'missing' : JSON.stringify(value)
  return text.length > 40 ? `${text.slice(0, 37)}…` : text
}

const own = (fields: Fields, name: string): unknown => (Object.hasOwn(fields, name) ? fields[name] : undefined)

class Reader {
  private parts = 1n
  private fabrics = new Set<string>()

  block(value: unknown): void {
    const block = this.fields(value, 'file')
    if (own(block, 'format') !== 'nestwright.block')
      throw new Bad('format', `is ${shown(own(block, 'format'))}; a block file says "nestwright.block"`)
    const version = own(block, 'version')
    if (typeof version === 'number' && Number.isInteger(version) && version > 1)
      throw new Bad('version', `is ${version}, newer than this Nestwright reads; open it with a newer one`)
    if (version !== 1) throw new Bad('version', `is ${shown(version)}; give 1`)
    if (typeof own(block, 'name') !== 'string') throw new Bad('name', `is ${shown(own(block, 'name'))}; give the block a name in quotes`)
    this.measure(block)
    this.grid(block)
    this.fabricList(own(block, 'fabrics'))
    this.oneOf(own(block, 'order'), ORDERS, 'order')
    this.borders(own(block, 'borders'))
    this.cloth(own(block, 'cloth'))
    this.units(own(block, 'units'))
    this.press(own(block, 'press'))
  }

  private fields(value: unknown, place: string): Fields {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) throw new Bad(place, `is ${shown(value)}; give an object in braces`)
    return value as Fields
  }

  private list(value: unknown, place: string): readonly unknown[] {
    if (!Array.isArray(value)) throw new Bad(place, `is ${shown(value)}; give a list in brackets`)
    return value
  }

  private oneOf<T extends string>(value: unknown, known: readonly T[], place: string): void {
    if (value !== undefined && !known.includes(value as T)) throw new Bad(place, `is ${shown(value)}; give one of ${known.join(', ')}`)
  }

  private flag(value: unknown, place: string): void {
    if (value !== undefined && typeof value !== 'boolean') throw new Bad(place, `is ${shown(value)}; give true or false`)
  }

  private length(value: unknown, place: string): void {
    const length = typeof value === 'number' || typeof value === 'string' ? parseRational(value) : null
    if (length === null) throw new Bad(place, `is ${shown(value)}; give a length such as 3 or "2 1/2"`)
    if (length.n <= 0n) throw new Bad(place, `is ${shown(value)}; give a length above zero`)
    if (compare(length, rational(1_000_000)) > 0 || length.d > 10n ** 15n)
      throw new Bad(place, `is ${shown(value)}, which no ruler shows; give a length such as 3 or "2 1/2"`)
  }

  private optionalLength(value: unknown, place: string): void {
    if (value !== undefined) this.length(value, place)
  }

  private measure(block: Fields): void {
    const measure = this.fields(own(block, 'measure'), 'measure')
    const unit = own(measure, 'unit')
    if (unit !== 'in' && unit !== 'cm') throw new Bad('measure.unit', `is ${shown(unit)}; give "in" or "cm"`)
    this.optionalLength(own(measure, 'seam'), 'measure.seam')
    this.optionalLength(own(measure, 'round'), 'measure.round')
  }

  private grid(block: Fields): void {
    const grid = this.fields(own(block, 'grid'), 'grid')
    for (const name of ['columns', 'rows']) {
      const count = own(grid, name)
      if (typeof count !== 'number' || !Number.isInteger(count) || count < 1 || count > FARTHEST)
        throw new Bad(`grid.${name}`, `is ${shown(count)}; give a whole number of cells from 1 to ${FARTHEST}`)
    }
    this.length(own(grid, 'cell'), 'grid.cell')
  }

  private id(value: unknown, place: string, known: Set<string>): void {
    if (typeof value !== 'string' || !/^[A-Za-z0-9._-]{1,64}$/.test(value))
      throw new Bad(place, `is ${shown(value)}; give 1 to 64 letters, digits, ".", "_" or "-"`)
    if (known.has(value)) throw new Bad(place, `is ${shown(value)}, which another one has already; give it an id of its own`)
    known.add(value)
  }

  private fabricList(value: unknown): void {
    this.list(value, 'fabrics').forEach((item, index) => {
      const place = `fabrics[${index}]`
      const fabric = this.fields(item, place)
      this.id(own(fabric, 'id'), `${place}.id`, this.fabrics)
      if (typeof own(fabric, 'name') !== 'string') throw new Bad(`${place}.name`, `is ${shown(own(fabric, 'name'))}; give a name in quotes`)
      const colour = own(fabric, 'colour')
      if (typeof colour !== 'string' || !/^#[0-9a-fA-F]{6}$/.test(colour))
        throw new Bad(`${place}.colour`, `is ${shown(colour)}; give a colour as "#rrggbb"`)
    })
  }

  private fabric(value: unknown, place: string): void {
    if (typeof value !== 'string' || !this.fabrics.has(value))
      throw new Bad(place, `names the fabric ${shown(value)}, which is not among the fabrics; add it or name another`)
  }

  private borders(value: unknown): void {
    if (value === undefined) return
    this.list(value, 'borders').forEach((item, index) => {
      const place = `borders[${index}]`
      const border = this.fields(item, place)
      this.length(own(border, 'finishedWidth'), `${place}.finishedWidth`)
      this.fabric(own(border, 'fabric'), `${place}.fabric`)
    })
  }

  private cloth(value: unknown): void {
    if (value !== undefined) this.optionalLength(own(this.fields(value, 'cloth'), 'usableWidth'), 'cloth.usableWidth')
  }

  private position(value: unknown, place: string): Rational {
    const position = typeof value === 'number' || typeof value === 'string' ? parseRational(value) : null
    if (position === null) throw new Bad(place, `is ${shown(value)}; give cells as a number or as a fraction such as "1/3"`)
    if (compare(position, rational(FARTHEST)) > 0 || compare(position, rational(-FARTHEST)) < 0)
      throw new Bad(place, `is ${shown(value)}; stay within ${FARTHEST} cells`)
    if (this.parts % position.d !== 0n) {
      this.parts = lcm(this.parts, position.d)
      if (this.parts > MOST_PARTS)
        throw new Bad(place, `is ${shown(value)}, which cannot be held exactly beside the other positions; use simpler fractions of a cell`)
    }
    return position
  }

  private pair(value: unknown, place: string): Exact {
    if (!Array.isArray(value) || value.length !== 2) throw new Bad(place, `is ${shown(value)}; give two numbers in brackets`)
    return [this.position(value[0], place), this.position(value[1], place)]
  }

  private press(value: unknown): void {
    if (value === undefined) return
    this.list(value, 'press').forEach((item, index) => {
      const place = `press[${index}]`
      const word = this.fields(item, place)
      this.pair(own(word, 'at'), `${place}.at`)
      if (own(word, 'toward') !== 'open') this.pair(own(word, 'toward'), `${place}.toward`)
    })
  }

  private units(value: unknown): void {
    const units = this.list(value, 'units')
    if (units.length > MOST_UNITS) throw new Bad('units', `holds ${units.length} units; a block has at most ${MOST_UNITS}`)
    const ids = new Set<string>()
    units.forEach((item, index) => {
      this.unit(this.fields(item, `units[${index}]`), `units[${index}]`, ids)
    })
  }

  private unit(unit: Fields, place: string, ids: Set<string>): void {
    this.id(own(unit, 'id'), `${place}.id`, ids)
    const kind = own(unit, 'kind')
    if (!KINDS.includes(kind as Kind)) throw new Bad(`${place}.kind`, `is ${shown(kind)}; give one of ${KINDS.join(', ')}`)
    const facts = KIND_FACTS[kind as Kind]
    this.method(own(unit, 'method'), facts, kind as Kind, place)
    this.flag(own(unit, 'pressFree'), `${place}.pressFree`)
    this.flag(own(unit, 'open'), `${place}.open`)
    const named = this.patchFabrics(own(unit, 'fabrics'), facts, kind as Kind, `${place}.fabrics`)
    if (kind === 'polygon') this.polygon(own(unit, 'corners'), `${place}.corners`)
    else this.box(unit, kind as Kind, facts, named, place)
  }

  private method(value: unknown, { methods }: KindFacts, kind: Kind, place: string): void {
    if (value === undefined || methods.includes(value as never)) return
    const known = METHODS.includes(value as never)
    throw new Bad(
      `${place}.method`,
      known
        ? `is ${shown(value)}, which does not make a ${kind}; give one of ${methods.join(', ')}`
        : `is ${shown(value)}; give one of ${methods.join(', ')}`,
    )
  }

  private patchFabrics(value: unknown, { names }: KindFacts, kind: Kind, place: string): readonly string[] {
    const fabrics = this.fields(value, place)
    const given = Object.keys(fabrics)
    const wanted = kind === 'strips' ? given.map((_, index) => `strip${index + 1}`) : names
    const unknown = given.find((name) => !wanted.includes(name))
    if (unknown !== undefined)
      throw new Bad(
        place,
        kind === 'strips'
          ? `names ${shown(unknown)}; number the strips from strip1 without a hole`
          : `names ${shown(unknown)}, which a ${kind} does not have; it has ${names.join(', ')}`,
      )
    const missing = (kind === 'cornered' ? ['centre'] : wanted).find((name) => !given.includes(name))
    if (missing !== undefined || given.length === 0) throw new Bad(place, `does not say which fabric ${missing ?? 'strip1'} is of; name one`)
    if (given.length > 1000) throw new Bad(place, `names ${given.length} strips; a unit has at most 1000`)
    for (const name of given) this.fabric(fabrics[name], place)
    return given
  }

  private box(unit: Fields, kind: Kind, { proportion }: KindFacts, named: readonly string[], place: string): void {
    this.pair(own(unit, 'at'), `${place}.at`)
    const size = this.pair(own(unit, 'size'), `${place}.size`)
    if (size.some(({ n }) => n <= 0n)) throw new Bad(`${place}.size`, `is ${shown(own(unit, 'size'))}; give a width and a height above zero`)
    const turn = own(unit, 'turn')
    if (turn !== undefined && turn !== 0 && turn !== 1 && turn !== 2 && turn !== 3)
      throw new Bad(`${place}.turn`, `is ${shown(turn)}; give quarter turns clockwise: 0, 1, 2 or 3`)
    this.flag(own(unit, 'mirror'), `${place}.mirror`)
    const [w, h]: Exact = turn === 1 || turn === 3 ? [size[1], size[0]] : size
    if (proportion === 'square' && compare(w, h) !== 0)
      throw new Bad(`${place}.size`, `is ${shown(own(unit, 'size'))}; a ${kind} is square, give the same width and height`)
    if (proportion === 'twice as wide as high' && compare(w, multiply(h, rational(2))) !== 0)
      throw new Bad(`${place}.size`, `is ${shown(own(unit, 'size'))}; a goose is twice as wide as high before it is turned`)
    if (kind === 'cornered') this.clips(own(unit, 'corner'), w, h, named, `${place}.corner`)
  }

  private clips(value: unknown, w: Rational, h: Rational, named: readonly string[], place: string): void {
    const corner = this.position(value, place)
    if (corner.n <= 0n) throw new Bad(place, `is ${shown(value)}; give the leg of the clipped corners in cells, above zero`)
    const has = CORNERS.map((name) => (named.includes(name) ? 1 : 0))
    const sides = [
      [has[0], has[1], w],
      [has[2], has[3], w],
      [has[1], has[2], h],
      [has[3], has[0], h],
    ] as const
    const tooLong = sides.some(([a = 0, b = 0, side]) => compare(multiply(corner, rational(a + b)), side) > 0)
    if (tooLong) throw new Bad(place, `is ${shown(value)}, so that the clipped corners overlap; give a shorter leg`)
  }

  private polygon(value: unknown, place: string): void {
    const list = this.list(value, place)
    if (list.length < 3) throw new Bad(place, `has ${list.length} corners; a patch needs at least three`)
    if (list.length > 2000) throw new Bad(place, `has ${list.length} corners; a patch has at most 2000`)
    const corners = list.map((corner) => this.pair(corner, place))
    if (crossed(corners)) throw new Bad(place, 'cross or touch each other, or leave no cloth; draw the outline once round without crossing it')
  }
}

/** Whether an outline is anything but one simple loop round some cloth. */
function crossed(corners: readonly Exact[]): boolean {
  const count = corners.length
  const at = (index: number): Exact => corners[((index % count) + count) % count] as Exact
  let area = rational(0)
  for (let i = 0; i < count; i++) {
    area = add(area, subtract(multiply(at(i)[0], at(i + 1)[1]), multiply(at(i + 1)[0], at(i)[1])))
    if (same(at(i), at(i + 1))) return true
    // A spike goes out and comes back on itself.
    if (turnOf(at(i - 1), at(i), at(i + 1)) === 0 && between(at(i), at(i + 1), at(i - 1), true)) return true
    for (let j = i + 2; j < count; j++) if (!(i === 0 && j === count - 1) && meet(at(i), at(i + 1), at(j), at(j + 1))) return true
  }
  return area.n === 0n
}

const same = (a: Exact, b: Exact): boolean => compare(a[0], b[0]) === 0 && compare(a[1], b[1]) === 0

function turnOf(a: Exact, b: Exact, c: Exact): number {
  return compare(multiply(subtract(b[0], a[0]), subtract(c[1], a[1])), multiply(subtract(b[1], a[1]), subtract(c[0], a[0])))
}

/** Whether p, on the line through a and b, lies on the ray from a through b (`ray`) or on the stretch between them. */
function between(a: Exact, b: Exact, p: Exact, ray = false): boolean {
  const dot = add(multiply(subtract(b[0], a[0]), subtract(p[0], a[0])), multiply(subtract(b[1], a[1]), subtract(p[1], a[1])))
  if (ray) return dot.n > 0n
  const whole = add(multiply(subtract(b[0], a[0]), subtract(b[0], a[0])), multiply(subtract(b[1], a[1]), subtract(b[1], a[1])))
  return dot.n >= 0n && compare(dot, whole) <= 0
}

function meet(a: Exact, b: Exact, c: Exact, d: Exact): boolean {
  const [abc, abd, cda, cdb] = [turnOf(a, b, c), turnOf(a, b, d), turnOf(c, d, a), turnOf(c, d, b)]
  if (abc * abd < 0 && cda * cdb < 0) return true
  return (abc === 0 && between(a, b, c)) || (abd === 0 && between(a, b, d)) || (cda === 0 && between(c, d, a)) || (cdb === 0 && between(c, d, b))
}
