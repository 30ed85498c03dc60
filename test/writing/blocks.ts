/** Blocks to write up, each with something of its own; every fabric invented. */
import type { Block, Unit } from '../../geometry/index.ts'
import { lantern } from '../../web/document/starters/lantern.ts'
import { blockOf, square } from '../help.ts'
import {
  bearsPawWithNarrowSash,
  dutchmansPuzzle,
  friendshipStar,
  leMoyneStar,
  ohioStar,
  pinwheel,
  railFenceOfFour,
  snowball,
} from '../published/blocks.ts'
import { STAR } from './star.ts'

const plain: Block = { ...STAR, fabrics: STAR.fabrics.map((fabric) => (fabric.id === 'plum' ? { ...fabric, name: 'Plum' } : fabric)) }

const free = (id: string, patch: string, ...corners: [number, number][]): Unit => ({ id, kind: 'polygon', corners, fabrics: { patch } })

/** A kite of free patches on a square, with a clipped centre and a half rectangle beside it. */
const freePatches: Block = blockOf(
  4,
  4,
  [
    free('k1', 'a', [0, 0], [4, 0], [1, 1]),
    free('k2', 'b', [4, 0], [2, 3], [1, 1]),
    free('k3', 'c', [0, 0], [1, 1], [2, 3], [0, 3]),
    free('k4', 'd', [4, 0], [4, 3], [2, 3]),
    { id: 'h1', kind: 'half-rectangle', at: [0, 3], size: [2, 1], fabrics: { upper: 'a', lower: 'b' } },
    { id: 'h2', kind: 'half-rectangle', at: [2, 3], size: [2, 1], mirror: true, fabrics: { upper: 'a', lower: 'b' } },
  ],
  { name: 'Kite of free patches', grid: { columns: 4, rows: 4, cell: 2 } },
)

/** Two borders round a star, in centimetres, its geese by flipped corners. */
const framed: Block = {
  ...plain,
  name: 'Framed star in centimetres',
  measure: { unit: 'cm' },
  grid: { columns: 4, rows: 4, cell: 5 },
  units: plain.units.map((unit) => (unit.kind === 'goose' ? { ...unit, method: 'corner-flip' as const } : unit)),
  borders: [
    { finishedWidth: 2, fabric: 'plum' },
    { finishedWidth: 4, fabric: 'moss' },
  ],
}

/** Two trapezoids round a window: one bends round its corner, and is set in. */
const attic: Block = blockOf(
  3,
  3,
  [square('window', [1, 0], [2, 2], 'c'), free('sill', 'a', [0, 3], [1, 2], [3, 2], [3, 3]), free('frame', 'b', [0, 0], [1, 0], [1, 2], [0, 3])],
  { name: 'Attic window', grid: { columns: 3, rows: 3, cell: 3 } },
)

/** Four bars whirl round a middle: the first seam is sewn part of the way. */
const whirl: Block = blockOf(
  3,
  3,
  [
    square('n', [0, 0], [2, 1], 'a'),
    square('e', [2, 0], [1, 2], 'b'),
    square('s', [1, 2], [2, 1], 'a'),
    square('w', [0, 1], [1, 2], 'b'),
    square('m', [1, 1], [1, 1], 'd'),
  ],
  { name: 'Bright whirl', grid: { columns: 3, rows: 3, cell: 2 } },
)

export const BLOCKS = {
  star: plain,
  lantern,
  freePatches,
  framed,
  attic,
  whirl,
  ohioStar: ohioStar(4, 'qst-2'),
  pinwheel: pinwheel(),
  dutchmansPuzzle: dutchmansPuzzle(2, 'geese-4'),
  friendshipStar: friendshipStar(4, 'hst-4'),
  bearsPaw: bearsPawWithNarrowSash(),
  railFence: railFenceOfFour(),
  leMoyneStar: leMoyneStar(),
  snowball: snowball(),
} satisfies Record<string, Block>
