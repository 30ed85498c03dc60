/**
 * A quilt of copies of one block, edge to edge: the simplest quilt.
 *
 * In      a block; columns and rows; how copies may be turned and pressed.
 * Out     the quilt: every other place turned or pressed the other way where that is asked, or turns and pressings left free.
 * Source  two ways of pressing set alternately [S82].
 */
import { equal, toFile } from '../exact/rational.ts'
import type { SettingRequest } from '../neighbours/setting.ts'
import type { Block } from '../values/block.ts'
import { message, type Read } from '../values/messages.ts'
import type { Quilt, QuiltPlace } from '../values/quilt.ts'
import { finishedOf } from './wornBlocks.ts'

/** Where a quarter turn is asked of a block that is not square, the option's name and a message. */
export function quiltOfCopies(block: Block, { columns, rows, turn, press }: SettingRequest): Read<Quilt> {
  const [w, h] = finishedOf(block)
  const square = equal(w, h)
  if (turn === 'alternate' && !square) return { ok: false, place: 'turn', message: message('quarter-turn-not-square') }
  const places = Array.from({ length: columns * rows }, (_, index): QuiltPlace => {
    const at = [index % columns, Math.floor(index / columns)] as const
    const odd = (at[0] + at[1]) % 2 === 1
    return {
      id: `c${at[0] + 1}r${at[1] + 1}`,
      at,
      block: 'block',
      ...(turn === 'alternate' && odd ? { turn: 1 as const } : {}),
      ...(press === 'alternate' && odd ? { press: 'opposite' as const } : {}),
    }
  })
  const free = { turn: turn === 'free' ? ('quarter' as const) : ('none' as const), press: press === 'free' }
  const { seam, unit, round } = block.measure
  const wear = Object.fromEntries(block.fabrics.map(({ id }) => [id, id]))
  const quilt: Quilt = {
    format: 'nestwright.quilt',
    version: 1,
    name: block.name,
    measure: { unit, ...(seam === undefined ? {} : { seam }), ...(round === undefined ? {} : { round }) },
    grid: { columns, rows, cell: square ? toFile(w) : [toFile(w), toFile(h)] },
    fabrics: block.fabrics,
    blocks: [{ id: 'block', block, wear }],
    places,
    ...(block.cloth === undefined ? {} : { cloth: block.cloth }),
    ...(turn === 'free' || press === 'free' ? { free } : {}),
  }
  return { ok: true, value: quilt }
}
