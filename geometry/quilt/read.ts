/**
 * Read a quilt file: the document, or the one place that is wrong with it.
 *
 * In      text.
 * Out     the quilt as it is written (unknown fields stay), or the place and the message that says what to do there. Blocks are read by the block's
 *         own reader; what is wrong in one is named from the quilt's top (`blocks[0].block.units[2].size`).
 */
import { seamOf } from '../block/lengthsOf.ts'
import { checkBlock, exactly, FileFault, type Fields, MOST_BORDERS, own, Reader, shown } from '../block/read.ts'
import { equal } from '../exact/rational.ts'
import { type Block, ORDERS } from '../values/block.ts'
import { message, type Read } from '../values/messages.ts'
import { parseJson } from '../values/parseJson.ts'
import { CLOSINGS, COVERS, FREE_TURNS, PLACE_PRESSINGS, type Quilt, type Way, WAYS } from '../values/quilt.ts'

/** Places across or down: more than any bed quilt needs. */
const MOST_PLACES = 100
const FARTHEST = 10_000

/** A quilt as its file is written. */
export const writeQuilt = (quilt: Quilt): string => `${JSON.stringify(quilt, null, 2)}\n`

/** A quilt file's text to a quilt, or the place in the file that is wrong and a message that says why. */
export function readQuilt(text: string): Read<Quilt> {
  const parsed = parseJson(text)
  return parsed.ok ? checkQuilt(parsed.value) : parsed
}

/** A value that a program parsed or kept, checked as `readQuilt` checks a file. */
export function checkQuilt(value: unknown): Read<Quilt> {
  try {
    new QuiltReader().quilt(value)
    return { ok: true, value: value as Quilt }
  } catch (error) {
    if (error instanceof FileFault) return { ok: false, place: error.place, message: error.said }
    throw error
  }
}

class QuiltReader extends Reader {
  private readonly blockIds = new Set<string>()
  private readonly placeIds = new Set<string>()

  quilt(value: unknown): void {
    const quilt = this.fields(value, 'file')
    if (own(quilt, 'format') !== 'nestwright.quilt') throw new FileFault('format', message('other-format', { value: shown(own(quilt, 'format')) }))
    const version = own(quilt, 'version')
    if (typeof version === 'number' && Number.isInteger(version) && version > 1) throw new FileFault('version', message('newer-version', { version }))
    if (version !== 1) throw new FileFault('version', message('other-version', { value: shown(version) }))
    this.depth(quilt)
    this.name(own(quilt, 'name'), 'name')
    this.measure(quilt)
    this.placeGrid(this.fields(own(quilt, 'grid'), 'grid'))
    this.fabricList(own(quilt, 'fabrics'))
    this.oneOf(own(quilt, 'order'), ORDERS, 'order')
    this.cloth(own(quilt, 'cloth'))
    this.list(own(quilt, 'blocks'), 'blocks').forEach((item, index) => {
      this.wornBlock(this.fields(item, `blocks[${index}]`), `blocks[${index}]`, quilt)
    })
    this.frame(own(quilt, 'frame'), 'frame')
    const join = this.way(own(quilt, 'way'))
    this.borders(own(quilt, 'borders'))
    if (join !== 'whole' && own(quilt, 'borders') !== undefined) throw new FileFault('borders', message('borders-need-whole'))
    this.places(own(quilt, 'places'))
    this.free(own(quilt, 'free'))
    this.partsOfClass(own(quilt, 'parts'))
  }

  private placeGrid(grid: Fields): void {
    for (const name of ['columns', 'rows']) {
      const count = own(grid, name)
      if (typeof count !== 'number' || !Number.isInteger(count) || count < 1 || count > MOST_PLACES)
        throw new FileFault(`grid.${name}`, message('not-cell-count', { value: shown(count), most: MOST_PLACES }))
    }
    const cell = own(grid, 'cell')
    if (!Array.isArray(cell)) return this.length(cell, 'grid.cell')
    if (cell.length !== 2) throw new FileFault('grid.cell', message('not-length', { value: shown(cell) }))
    for (const side of cell) this.length(side, 'grid.cell')
  }

  private wornBlock(item: Fields, place: string, quilt: Fields): void {
    this.id(own(item, 'id'), `${place}.id`, this.blockIds)
    const read = checkBlock(own(item, 'block'))
    if (!read.ok) throw new FileFault(read.place === 'file' ? `${place}.block` : `${place}.block.${read.place}`, read.message)
    const ours = { measure: quilt.measure } as Block
    if (read.value.measure.unit !== ours.measure.unit) throw new FileFault(`${place}.block.measure.unit`, message('another-measure'))
    if (!equal(seamOf(read.value), seamOf(ours))) throw new FileFault(`${place}.block.measure.seam`, message('another-seam'))
    const wear = own(item, 'wear')
    if (wear === undefined) return
    const known = new Set(read.value.fabrics.map(({ id }) => id))
    for (const [fabric, worn] of Object.entries(this.fields(wear, `${place}.wear`))) {
      if (!known.has(fabric)) throw new FileFault(`${place}.wear.${fabric}`, message('unknown-worn'))
      this.fabric(worn, `${place}.wear.${fabric}`)
    }
  }

  private frame(value: unknown, place: string): void {
    if (value === undefined) return
    const rounds = this.list(value, place, MOST_BORDERS)
    rounds.forEach((item, index) => {
      const round = this.fields(item, `${place}[${index}]`)
      const last = index + 1 === rounds.length
      const width = own(round, 'finishedWidth')
      if (width === undefined && !last) throw new FileFault(`${place}[${index}].finishedWidth`, message('round-without-width'))
      this.optionalLength(width, `${place}[${index}].finishedWidth`)
      this.fabric(own(round, 'fabric'), `${place}[${index}].fabric`)
      if (own(round, 'oversize') !== undefined) this.lengthOrNone(own(round, 'oversize'), `${place}[${index}].oversize`)
    })
  }

  private lengthOrNone(value: unknown, place: string): void {
    const length = exactly(value)
    if (length === null) throw new FileFault(place, message('not-length', { value: shown(value) }))
    if (length.n < 0n) throw new FileFault(place, message('length-below-zero', { value: shown(value) }))
    if (length.n > 0n) this.length(value, place)
  }

  private way(value: unknown): Way {
    if (value === undefined) return 'whole'
    const way = this.fields(value, 'way')
    this.oneOf(own(way, 'join'), WAYS, 'way.join')
    const join = (own(way, 'join') ?? 'whole') as Way
    this.optionalLength(own(way, 'width'), 'way.width')
    const cut = join === 'strips' || join === 'butted'
    if (cut || own(way, 'fabric') !== undefined) this.fabric(own(way, 'fabric'), 'way.fabric')
    if (own(way, 'coverFabric') !== undefined) this.fabric(own(way, 'coverFabric'), 'way.coverFabric')
    this.oneOf(own(way, 'cover'), COVERS, 'way.cover')
    this.oneOf(own(way, 'close'), CLOSINGS, 'way.close')
    if (own(way, 'over') !== undefined) this.lengthOrNone(own(way, 'over'), 'way.over')
    if (own(way, 'sash') === undefined) return join
    const sash = this.fields(own(way, 'sash'), 'way.sash')
    this.lengthOrNone(own(sash, 'width'), 'way.sash.width')
    this.fabric(own(sash, 'fabric'), 'way.sash.fabric')
    if (own(sash, 'corner') !== undefined) this.fabric(own(sash, 'corner'), 'way.sash.corner')
    this.flag(own(sash, 'round'), 'way.sash.round')
    return join
  }

  private places(value: unknown): void {
    const places = this.list(value, 'places')
    const most = MOST_PLACES * MOST_PLACES
    if (places.length > most) throw new FileFault('places', message('too-many-units', { count: places.length, most }))
    places.forEach((item, index) => {
      const at = `places[${index}]`
      const place = this.fields(item, at)
      this.id(own(place, 'id'), `${at}.id`, this.placeIds)
      this.wholePair(own(place, 'at'), `${at}.at`, -FARTHEST)
      if (own(place, 'size') !== undefined) this.wholePair(own(place, 'size'), `${at}.size`, 1)
      const [block, plain] = [own(place, 'block'), own(place, 'plain')]
      if ((block === undefined) === (plain === undefined)) throw new FileFault(at, message('block-or-plain'))
      if (plain !== undefined) this.fabric(plain, `${at}.plain`)
      else if (!this.blockIds.has(block as string)) throw new FileFault(`${at}.block`, message('unknown-block', { value: shown(block) }))
      const turn = own(place, 'turn')
      if (turn !== undefined && ![0, 1, 2, 3].includes(turn as number)) throw new FileFault(`${at}.turn`, message('not-turn', { value: shown(turn) }))
      this.oneOf(own(place, 'press'), PLACE_PRESSINGS, `${at}.press`)
      this.flag(own(place, 'fixed'), `${at}.fixed`)
      this.frame(own(place, 'frame'), `${at}.frame`)
    })
  }

  private wholePair(value: unknown, place: string, least: number): void {
    const good = Array.isArray(value) && value.length === 2 && value.every((one) => Number.isInteger(one) && one >= least && one <= FARTHEST)
    if (!good) throw new FileFault(place, message('not-whole-cells', { value: shown(value), least }))
  }

  private free(value: unknown): void {
    if (value === undefined) return
    const free = this.fields(value, 'free')
    this.oneOf(own(free, 'turn'), FREE_TURNS, 'free.turn')
    this.flag(own(free, 'press'), 'free.press')
  }

  private partsOfClass(value: unknown): void {
    if (value === undefined) return
    const given = new Set<unknown>()
    this.list(value, 'parts').forEach((item, index) => {
      const part = this.fields(item, `parts[${index}]`)
      this.name(own(part, 'title'), `parts[${index}].title`)
      this.list(own(part, 'places'), `parts[${index}].places`).forEach((id, place) => {
        const at = `parts[${index}].places[${place}]`
        if (!this.placeIds.has(id as string)) throw new FileFault(at, message('unknown-place', { value: shown(id) }))
        if (given.has(id)) throw new FileFault(at, message('id-taken', { value: shown(id) }))
        given.add(id)
      })
    })
  }
}
