/**
 * Read a block file: the document, or the one place that is wrong with it.
 *
 * In      text, or a value that came out of JSON.
 * Out     the block as it is written (unknown fields stay), or the place and the message that says what to do there.
 * Exact   a crossed polygon, a denominator too great and corners that overlap are found with whole numbers.
 */
import { compare, lcm, multiply, parseRational, type Rational, rational } from '../exact/rational.ts'
import { KIND_FACTS, type KindFacts } from '../units/kinds.ts'
import { LONGEST_PHOTO, MOST_PIXELS, photoSize, pictureSize } from '../colour/pictureSize.ts'
import { DEEPEST, parseJson } from '../values/parseJson.ts'
import { type FoundValue, type Message, message, type Read } from '../values/messages.ts'
import { type Block, DIRECTIONS, type Kind, KINDS, METHODS, ORDERS, type PrintKind, PRINTS } from '../values/block.ts'

/** Positions in one file share a denominator of at most this: 11 · 7 · 5 · 9 · 16, every fraction a maker meets. */
const MOST_PARTS = 55_440n
const FARTHEST = 10_000
export const MOST_UNITS = 100_000

/** In inches or centimetres: finer than any ruler, and than any fabric keeps. */
const SMALLEST_LENGTH = rational(1, 1000)
const GREATEST_LENGTH = rational(1_000_000)
/** A length may be any double: a third written as 0.3333333333333333 has 10¹⁶ parts. */
const SMALLEST_PARTS = 10n ** 40n
/** More than any block has, and few enough to be worked out while it is edited. */
export const MOST_BORDERS = 60
/** One for each seam of the largest block that is pressed seam by seam. */
const MOST_PRESS_ENTRIES = 100_000
/** Far more than any patch has; the time to look for crossings stays short. */
const MOST_CORNERS = 10_000
const MOST_STRIPS = 1000
/** A number takes 25 characters at most; a longer text is no place on a grid, and costs time to hold exactly. */
const LONGEST_TEXT = 100

/** Far more than anyone types: a page set in longer words would never be done. */
export const LONGEST_WORDS = 20_000
/** Blocks that one booklet makes, at most: more than any class sews from one sheet. */
export const MOST_BLOCKS = 999
/** Whether a value can be the number of blocks that a booklet makes. */
export const isBlockCount = (value: unknown): value is number => Number.isInteger(value) && (value as number) >= 1 && (value as number) <= MOST_BLOCKS

const CORNERS = ['topLeft', 'topRight', 'bottomRight', 'bottomLeft'] as const

/** What is wrong, on its way out of the reader. */
export class FileFault extends Error {
  readonly place: string
  readonly said: Message
  constructor(place: string, said: Message) {
    super(said.code)
    this.place = place
    this.said = said
  }
}

/** A block file's text to a block, or the place in the file that is wrong and a message that says why. */
export function readBlock(text: string): Read<Block> {
  const parsed = parseJson(text)
  return parsed.ok ? checkBlock(parsed.value) : parsed
}

/** A parsed block file to a block, or the place in the file that is wrong and a message that says why. */
export function checkBlock(value: unknown): Read<Block> {
  try {
    new Reader().block(value)
    return { ok: true, value: value as Block }
  } catch (error) {
    if (error instanceof FileFault) return { ok: false, place: error.place, message: error.said }
    throw error
  }
}

/** The block as a file, to be read again: unknown fields are kept. */
export const writeBlock = (block: Block): string => `${JSON.stringify(block, null, 2)}\n`

export type Fields = Readonly<Record<string, unknown>>
type Exact = readonly [Rational, Rational]

/** A value of a file as an error shows it: short plain values as JSON, else what kind of value it is. */
export const shown = (value: unknown): FoundValue => {
  const plain = (item: unknown): boolean => item === null || ['string', 'number', 'boolean'].includes(typeof item)
  if (Array.isArray(value) && !(value.length <= 4 && value.every(plain))) return 'list'
  if (!Array.isArray(value) && !plain(value)) return value === undefined ? 'missing' : 'object'
  return { text: short(value) }
}

const short = (value: unknown): string => {
  const text = typeof value === 'number' ? String(value) : JSON.stringify(value)
  return text.length > 40 ? `${text.slice(0, 37)}…` : text
}

/** The exact value of a number or of short text; null where it is neither. Most positions are whole, and a file may hold 400,000 of them. */
export function exactly(value: unknown): Rational | null {
  if (typeof value === 'string' && value.length > LONGEST_TEXT) return null
  return Number.isSafeInteger(value) ? { n: BigInt(value as number), d: 1n } : parseRational(value)
}

const TWO = rational(2)
const FARTHEST_RIGHT = rational(FARTHEST)
const FARTHEST_LEFT = rational(-FARTHEST)

/** A field of a file's object; undefined where it has none of its own, so `constructor` is a name like any other. */
export const own = (fields: Fields, name: string): unknown => (Object.hasOwn(fields, name) ? fields[name] : undefined)

/** Checks of the values that block and quilt files share; each throws a `FileFault` that names the place. */
export class Reader {
  private parts = 1n
  protected fabrics = new Set<string>()

  block(value: unknown): void {
    const block = this.fields(value, 'file')
    if (own(block, 'format') !== 'nestwright.block') throw new FileFault('format', message('other-format', { value: shown(own(block, 'format')) }))
    const version = own(block, 'version')
    if (typeof version === 'number' && Number.isInteger(version) && version > 1) throw new FileFault('version', message('newer-version', { version }))
    if (version !== 1) throw new FileFault('version', message('other-version', { value: shown(version) }))
    this.name(own(block, 'name'), 'name')
    this.measure(block)
    this.grid(block)
    this.fabricList(own(block, 'fabrics'))
    this.oneOf(own(block, 'order'), ORDERS, 'order')
    this.borders(own(block, 'borders'))
    this.cloth(own(block, 'cloth'))
    this.units(own(block, 'units'))
    this.press(own(block, 'press'))
    this.flag(own(block, 'pressAlike'), 'pressAlike')
    this.booklet(own(block, 'booklet'))
    this.depth(block)
  }

  protected fields(value: unknown, place: string): Fields {
    if (typeof value !== 'object' || value === null || Array.isArray(value))
      throw new FileFault(place, message('not-object', { value: shown(value) }))
    return value as Fields
  }

  /** Whatever the file holds, ours or not: writing it goes down into each value by a call. */
  protected depth(block: Fields): void {
    let level: unknown[] = [block]
    for (let depth = 0; level.length > 0; depth += 1) {
      if (depth > DEEPEST) throw new FileFault('file', message('too-deep', { most: DEEPEST }))
      level = level.flatMap((value) => Object.values(value as object).filter((item) => typeof item === 'object' && item !== null))
    }
  }

  protected name(value: unknown, place: string): void {
    if (typeof value !== 'string') throw new FileFault(place, message('not-name', { value: shown(value) }))
    if (value.length > LONGEST_WORDS) throw new FileFault(place, message('name-too-long', { count: value.length, most: LONGEST_WORDS }))
  }

  protected list(value: unknown, place: string, most = Number.POSITIVE_INFINITY): readonly unknown[] {
    if (!Array.isArray(value)) throw new FileFault(place, message('not-list', { value: shown(value) }))
    if (value.length > most) throw new FileFault(place, message('list-too-long', { count: value.length, most }))
    return value
  }

  protected oneOf<T extends string>(value: unknown, known: readonly T[], place: string): void {
    if (value !== undefined && !known.includes(value as T)) throw new FileFault(place, message('not-one-of', { value: shown(value), known }))
  }

  protected flag(value: unknown, place: string): void {
    if (value !== undefined && typeof value !== 'boolean') throw new FileFault(place, message('not-flag', { value: shown(value) }))
  }

  protected length(value: unknown, place: string): void {
    const length = exactly(value)
    if (length === null) throw new FileFault(place, message('not-length', { value: shown(value) }))
    if (length.n <= 0n) throw new FileFault(place, message('length-not-above-zero', { value: shown(value) }))
    if (compare(length, GREATEST_LENGTH) > 0 || compare(length, SMALLEST_LENGTH) < 0 || length.d > SMALLEST_PARTS)
      throw new FileFault(place, message('length-beyond-rulers', { value: shown(value) }))
  }

  protected optionalLength(value: unknown, place: string): void {
    if (value !== undefined) this.length(value, place)
  }

  protected measure(block: Fields): void {
    const measure = this.fields(own(block, 'measure'), 'measure')
    const unit = own(measure, 'unit')
    if (unit !== 'in' && unit !== 'cm') throw new FileFault('measure.unit', message('not-measure', { value: shown(unit) }))
    this.optionalLength(own(measure, 'seam'), 'measure.seam')
    this.optionalLength(own(measure, 'round'), 'measure.round')
  }

  private grid(block: Fields): void {
    const grid = this.fields(own(block, 'grid'), 'grid')
    for (const name of ['columns', 'rows']) {
      const count = own(grid, name)
      if (typeof count !== 'number' || !Number.isInteger(count) || count < 1 || count > FARTHEST)
        throw new FileFault(`grid.${name}`, message('not-cell-count', { value: shown(count), most: FARTHEST }))
    }
    this.length(own(grid, 'cell'), 'grid.cell')
  }

  protected id(value: unknown, place: string, known: Set<string>): void {
    if (typeof value !== 'string' || !/^[A-Za-z0-9._-]{1,64}$/.test(value)) throw new FileFault(place, message('not-id', { value: shown(value) }))
    if (known.has(value)) throw new FileFault(place, message('id-taken', { value: shown(value) }))
    known.add(value)
  }

  protected fabricList(value: unknown): void {
    this.list(value, 'fabrics').forEach((item, index) => {
      const place = `fabrics[${index}]`
      const fabric = this.fields(item, place)
      this.id(own(fabric, 'id'), `${place}.id`, this.fabrics)
      this.name(own(fabric, 'name'), `${place}.name`)
      const colour = own(fabric, 'colour')
      if (typeof colour !== 'string' || !/^#[0-9a-fA-F]{6}$/.test(colour))
        throw new FileFault(`${place}.colour`, message('not-colour', { value: shown(colour) }))
      this.oneOf(own(fabric, 'direction'), DIRECTIONS, `${place}.direction`)
      this.print(own(fabric, 'print'), `${place}.print`)
    })
  }

  private print(value: unknown, place: string): void {
    if (value === undefined) return
    const print = this.fields(value, place)
    const kind = own(print, 'kind')
    if (!PRINTS.includes(kind as PrintKind)) throw new FileFault(`${place}.kind`, message('not-one-of', { value: shown(kind), known: PRINTS }))
    const second = own(print, 'second')
    const needed = kind !== 'photo'
    if ((needed || second !== undefined) && (typeof second !== 'string' || !/^#[0-9a-fA-F]{6}$/.test(second)))
      throw new FileFault(`${place}.second`, message('not-print-colour', { value: shown(second) }))
    this.length(own(print, 'repeat'), `${place}.repeat`)
    const photo = own(print, 'photo')
    if ((!needed || photo !== undefined) && (typeof photo !== 'string' || photoSize(photo) === null))
      throw new FileFault(`${place}.photo`, message('not-print-photo', { value: shown(photo), most: LONGEST_PHOTO }))
  }

  protected fabric(value: unknown, place: string): void {
    if (typeof value !== 'string' || !this.fabrics.has(value)) throw new FileFault(place, message('unknown-fabric', { value: shown(value) }))
  }

  protected borders(value: unknown): void {
    if (value === undefined) return
    this.list(value, 'borders', MOST_BORDERS).forEach((item, index) => {
      const place = `borders[${index}]`
      const border = this.fields(item, place)
      this.length(own(border, 'finishedWidth'), `${place}.finishedWidth`)
      this.fabric(own(border, 'fabric'), `${place}.fabric`)
      if (own(border, 'corner') !== undefined) this.fabric(own(border, 'corner'), `${place}.corner`)
    })
  }

  protected cloth(value: unknown): void {
    if (value !== undefined) this.optionalLength(own(this.fields(value, 'cloth'), 'usableWidth'), 'cloth.usableWidth')
  }

  private booklet(value: unknown): void {
    if (value === undefined) return
    const booklet = this.fields(value, 'booklet')
    for (const name of ['title', 'by']) this.words(own(booklet, name), `booklet.${name}`)
    this.words(own(booklet, 'introduction'), 'booklet.introduction')
    const blocks = own(booklet, 'blocks')
    if (blocks !== undefined && !isBlockCount(blocks))
      throw new FileFault('booklet.blocks', message('not-block-count', { value: shown(blocks), most: MOST_BLOCKS }))
    const steps = own(booklet, 'steps')
    if (steps === undefined) return
    for (const [key, item] of Object.entries(this.fields(steps, 'booklet.steps'))) {
      const place = `booklet.steps[${short(key)}]`
      const step = this.fields(item, place)
      for (const name of ['words', 'note']) this.words(own(step, name), `${place}.${name}`)
      // Our own words, kept to be compared and never shown: as long as they were.
      this.words(own(step, 'of'), `${place}.of`, Number.POSITIVE_INFINITY)
      this.photograph(own(step, 'photograph'), `${place}.photograph`)
    }
  }

  private words(value: unknown, place: string, longest = LONGEST_WORDS): void {
    if (value === undefined) return
    if (typeof value !== 'string') throw new FileFault(place, message('not-text', { value: shown(value) }))
    if (value.length > longest) throw new FileFault(place, message('text-too-long', { count: value.length, most: longest }))
  }

  private photograph(value: unknown, place: string): void {
    if (value === undefined) return
    if (typeof value !== 'string' || !/^data:image\/(jpeg|png);base64,[A-Za-z0-9+/]+={0,2}$/.test(value))
      throw new FileFault(place, message('not-photograph', { value: shown(value) }))
    // Without a header that says its size it cannot be unpacked either: the booklet says that it is missing.
    const { width, height } = pictureSize(value) ?? { width: 1, height: 1 }
    if (width * height < 1 || width * height > MOST_PIXELS)
      throw new FileFault(place, message('photograph-size', { width, height, most: MOST_PIXELS }))
  }

  private position(value: unknown, place: string): Rational {
    const position = exactly(value)
    if (position === null) throw new FileFault(place, message('not-position', { value: shown(value) }))
    if (compare(position, FARTHEST_RIGHT) > 0 || compare(position, FARTHEST_LEFT) < 0)
      throw new FileFault(place, message('position-too-far', { value: shown(value), most: FARTHEST }))
    if (this.parts % position.d !== 0n) {
      this.parts = lcm(this.parts, position.d)
      if (this.parts > MOST_PARTS) throw new FileFault(place, message('position-not-exact', { value: shown(value) }))
    }
    return position
  }

  private pair(value: unknown, place: string): Exact {
    if (!Array.isArray(value) || value.length !== 2) throw new FileFault(place, message('not-pair', { value: shown(value) }))
    return [this.position(value[0], place), this.position(value[1], place)]
  }

  private press(value: unknown): void {
    if (value === undefined) return
    this.list(value, 'press', MOST_PRESS_ENTRIES).forEach((item, index) => {
      const place = `press[${index}]`
      const word = this.fields(item, place)
      this.pair(own(word, 'at'), `${place}.at`)
      if (own(word, 'toward') !== 'open') this.pair(own(word, 'toward'), `${place}.toward`)
    })
  }

  private units(value: unknown): void {
    const units = this.list(value, 'units')
    if (units.length > MOST_UNITS) throw new FileFault('units', message('too-many-units', { count: units.length, most: MOST_UNITS }))
    const ids = new Set<string>()
    units.forEach((item, index) => {
      this.unit(this.fields(item, `units[${index}]`), `units[${index}]`, ids)
    })
  }

  private unit(unit: Fields, place: string, ids: Set<string>): void {
    this.id(own(unit, 'id'), `${place}.id`, ids)
    const name = own(unit, 'name')
    if (name !== undefined) this.name(name, `${place}.name`)
    const kind = own(unit, 'kind')
    if (!KINDS.includes(kind as Kind)) throw new FileFault(`${place}.kind`, message('not-one-of', { value: shown(kind), known: KINDS }))
    const facts = KIND_FACTS[kind as Kind]
    this.method(own(unit, 'method'), facts, kind as Kind, place)
    this.optionalLength(own(unit, 'oversize'), `${place}.oversize`)
    this.flag(own(unit, 'pressFree'), `${place}.pressFree`)
    this.flag(own(unit, 'open'), `${place}.open`)
    const named = this.patchFabrics(own(unit, 'fabrics'), facts, kind as Kind, `${place}.fabrics`)
    if (kind === 'polygon') this.polygon(own(unit, 'corners'), `${place}.corners`)
    else this.box(unit, kind as Kind, facts, named, place)
  }

  private method(value: unknown, { methods }: KindFacts, kind: Kind, place: string): void {
    if (value === undefined || methods.includes(value as never)) return
    const known = METHODS.includes(value as never)
    throw new FileFault(
      `${place}.method`,
      known
        ? message('method-of-another-kind', { value: shown(value), kind, known: methods })
        : message('not-one-of', { value: shown(value), known: methods }),
    )
  }

  private patchFabrics(value: unknown, { names }: KindFacts, kind: Kind, place: string): readonly string[] {
    const fabrics = this.fields(value, place)
    const given = Object.keys(fabrics)
    if (given.length > MOST_STRIPS) throw new FileFault(place, message('too-many-patches', { count: given.length, most: MOST_STRIPS }))
    const wanted = kind === 'strips' ? given.map((_, index) => `strip${index + 1}`) : names
    const known = kind === 'strips' ? new Set(wanted) : undefined
    const unknown = given.find((name) => (known === undefined ? !wanted.includes(name) : !known.has(name)))
    if (unknown !== undefined)
      throw new FileFault(
        place,
        kind === 'strips'
          ? message('strips-with-hole', { value: shown(unknown) })
          : message('unknown-patch', { value: shown(unknown), kind, known: names }),
      )
    const missing = (kind === 'cornered' ? ['centre'] : wanted).find((name) => !Object.hasOwn(fabrics, name))
    if (missing !== undefined || given.length === 0) throw new FileFault(place, message('patch-without-fabric', { patch: missing ?? 'strip1' }))
    for (const name of given) this.fabric(fabrics[name], place)
    return given
  }

  private box(unit: Fields, kind: Kind, { proportion }: KindFacts, named: readonly string[], place: string): void {
    this.pair(own(unit, 'at'), `${place}.at`)
    const size = this.pair(own(unit, 'size'), `${place}.size`)
    if (size.some(({ n }) => n <= 0n)) throw new FileFault(`${place}.size`, message('size-not-above-zero', { value: shown(own(unit, 'size')) }))
    const turn = own(unit, 'turn')
    if (turn !== undefined && turn !== 0 && turn !== 1 && turn !== 2 && turn !== 3)
      throw new FileFault(`${place}.turn`, message('not-turn', { value: shown(turn) }))
    this.flag(own(unit, 'mirror'), `${place}.mirror`)
    const [w, h]: Exact = turn === 1 || turn === 3 ? [size[1], size[0]] : size
    if (proportion === 'square' && compare(w, h) !== 0)
      throw new FileFault(`${place}.size`, message('not-square', { value: shown(own(unit, 'size')), kind }))
    if (proportion === 'twice as wide as high' && compare(w, multiply(h, TWO)) !== 0)
      throw new FileFault(`${place}.size`, message('not-goose', { value: shown(own(unit, 'size')) }))
    if (kind === 'cornered') this.clips(own(unit, 'corner'), w, h, named, `${place}.corner`)
  }

  private clips(value: unknown, w: Rational, h: Rational, named: readonly string[], place: string): void {
    const corner = this.position(value, place)
    if (corner.n <= 0n) throw new FileFault(place, message('corner-not-above-zero', { value: shown(value) }))
    const has = CORNERS.map((name) => (named.includes(name) ? 1 : 0))
    const sides = [
      [has[0], has[1], w],
      [has[2], has[3], w],
      [has[1], has[2], h],
      [has[3], has[0], h],
    ] as const
    const tooLong = sides.some(([a = 0, b = 0, side]) => compare(multiply(corner, rational(a + b)), side) > 0)
    if (tooLong) throw new FileFault(place, message('corners-overlap', { value: shown(value) }))
    const opposite = (has[0] === 1 && has[2] === 1) || (has[1] === 1 && has[3] === 1)
    if (opposite && compare(corner, w) === 0 && compare(corner, h) === 0)
      throw new FileFault(place, message('corners-leave-no-centre', { value: shown(value) }))
  }

  private polygon(value: unknown, place: string): void {
    const list = this.list(value, place)
    if (list.length < 3) throw new FileFault(place, message('too-few-corners', { count: list.length }))
    if (list.length > MOST_CORNERS) throw new FileFault(place, message('too-many-corners', { count: list.length, most: MOST_CORNERS }))
    const corners = list.map((corner) => this.pair(corner, place))
    if (crossed(corners)) throw new FileFault(place, message('crossed-outline'))
  }
}

/** In whole parts of a cell. */
type Whole = readonly [number, number]

interface Side {
  readonly index: number
  readonly from: Whole
  readonly to: Whole
  readonly low: Whole
  readonly high: Whole
}

/**
 * Whether an outline is anything but one simple loop round some cloth.
 *
 * Taken from left to right, a side is tried only against those that begin before it ends. A loop that neither touches itself nor comes back on
 * itself always holds cloth, so the area need not be asked for.
 */
export function crossed(corners: readonly Exact[]): boolean {
  const count = corners.length
  const points = inWholeParts(corners)
  const at = (index: number): Whole => points[index % count] as Whole
  for (let i = 0; i < count; i++) if (comesBack(at(i), at(i + 1), at(i + 2))) return true
  const sides = points.map((from, index) => sideOf(index, from, at(index + 1))).sort((a, b) => a.low[0] - b.low[0])
  return sides.some((side, first) => {
    for (let later = first + 1; later < count; later++) {
      const other = sides[later] as Side
      if (other.low[0] > side.high[0]) return false
      const apart = Math.abs(side.index - other.index)
      if (apart > 1 && apart < count - 1 && meet(side, other)) return true
    }
    return false
  })
}

/** At most 10,000 cells of 55,440 parts: well within what a double holds exactly. */
function inWholeParts(corners: readonly Exact[]): Whole[] {
  const parts = corners.reduce((all, [x, y]) => lcm(lcm(all, x.d), y.d), 1n)
  const whole = ({ n, d }: Rational): number => Number(n * (parts / d))
  return corners.map(([x, y]) => [whole(x), whole(y)])
}

function sideOf(index: number, from: Whole, to: Whole): Side {
  const low: Whole = [Math.min(from[0], to[0]), Math.min(from[1], to[1])]
  const high: Whole = [Math.max(from[0], to[0]), Math.max(from[1], to[1])]
  return { index, from, to, low, high }
}

/** Whether a corner repeats the one before, or the outline goes out from a to b and back the way it came: a spike. */
function comesBack(a: Whole, b: Whole, c: Whole): boolean {
  if (a[0] === b[0] && a[1] === b[1]) return true
  return turnOf(a, b, c) === 0 && ((b[0] - a[0]) * (c[0] - b[0]) < 0 || (b[1] - a[1]) * (c[1] - b[1]) < 0)
}

/** The side of the line from a to b on which c lies: +1, 0 or −1. Products too long for a double are taken as BigInt. */
function turnOf(a: Whole, b: Whole, c: Whole): number {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]]
  const [one, two] = [ux * vy, uy * vx]
  if (Math.abs(one) < Number.MAX_SAFE_INTEGER && Math.abs(two) < Number.MAX_SAFE_INTEGER) return Math.sign(one - two)
  const exact = BigInt(ux) * BigInt(vy) - BigInt(uy) * BigInt(vx)
  return exact < 0n ? -1 : exact > 0n ? 1 : 0
}

const inBox = ({ low, high }: Side, [x, y]: Whole): boolean => low[0] <= x && x <= high[0] && low[1] <= y && y <= high[1]

function meet(a: Side, b: Side): boolean {
  if (a.high[1] < b.low[1] || b.high[1] < a.low[1]) return false
  const [from, to] = [turnOf(a.from, a.to, b.from), turnOf(a.from, a.to, b.to)]
  const [back, on] = [turnOf(b.from, b.to, a.from), turnOf(b.from, b.to, a.to)]
  if (from * to < 0 && back * on < 0) return true
  return (from === 0 && inBox(a, b.from)) || (to === 0 && inBox(a, b.to)) || (back === 0 && inBox(b, a.from)) || (on === 0 && inBox(b, a.to))
}
