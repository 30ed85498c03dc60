/**
 * Traditional blocks as block files: one builder a block, drawn cell by cell.
 *
 * How     `cells` reads a picture of units one cell large, `pieced` a whole block of such; `around` repeats units in four quarter turns.
 * Source  counts of units and sizes: by the tag (see `SOURCES.md`) beside each block. Where each unit lies is drawn from memory.
 */
import type { Block, BoxUnit, FilePoint, Method, Unit } from '../../geometry/values/block.ts'
import { blockOf, FABRICS } from '../help.ts'

type Place = readonly [number, number]
type Methods = Partial<Record<Unit['kind'], Method>>
const CLOTH = [...FABRICS, { id: 'e', name: 'Rust', colour: '#8c3b2a' }]
const WHOLE: Place = [0, 0]
const place = ([x, y]: FilePoint): Place => [Number(x), Number(y)]

/** Ids are given here, so that builders may copy and turn units freely. */
function block(name: string, [columns, rows]: Place, cell: number | string, units: readonly Unit[], methods: Methods = {}): Block {
  const numbered = units.map((unit, index): Unit => ({ ...unit, id: `u${index + 1}`, ...(methods[unit.kind] && { method: methods[unit.kind] }) }))
  return blockOf(columns, rows, numbered, { name, grid: { columns, rows, cell }, fabrics: CLOTH })
}

const box = (kind: BoxUnit['kind'], at: Place, size: Place, turn: number, fabrics: BoxUnit['fabrics']): BoxUnit => ({
  id: '',
  kind,
  at,
  size,
  turn: turn as 0,
  fabrics,
})
const plain = (patch: string, at: Place, size: Place = [1, 1]): Unit => box('square', at, size, 0, { patch })
const free = (patch: string, ...corners: Place[]): Unit => ({ id: '', kind: 'polygon', corners, fabrics: { patch } })
const knotted = (at: Place, corner: string, leg: number | string): Unit => ({
  ...box('cornered', at, [1, 1], 0, { centre: 'a', [corner]: 'b' }),
  corner: leg,
})

type Picture = (picture: TemplateStringsArray, ...letters: string[]) => Unit[]

/**
 * A row of cells a line, letters for fabrics:
 *   a       a square                          a/b, a\b   a half-square triangle, left and right of its seam
 *   a|b|c   upright strips                    a-b-c      strips from top to bottom
 *   abcd    an hourglass, clockwise from top  a^b, a>bc  a goose and its wings (both, or left and right), tip where the arrow points
 *   .       covered by something else
 * A goose begins in its top-left cell and reaches into the next.
 */
const cellsAt =
  (at: Place, times = 1): Picture =>
  (picture, ...letters) => {
    const lines = String.raw(picture, ...letters)
      .split('\n')
      .map((line) => line.trim().split(/\s+/).filter(Boolean))
      .filter((line) => line.length > 0)
    const units = lines.flatMap((line, y) => line.flatMap((word, x) => (word === '.' ? [] : [unitOf(word, [x, y])])))
    return moved(units, at, times)
  }
const cells = cellsAt(WHOLE)

/** A block that is all one picture. */
const pieced =
  (name: string, grid: Place, cell: number | string, methods: Methods = {}) =>
  (...picture: Parameters<Picture>): Block =>
    block(name, grid, cell, cells(...picture), methods)

const TIPS = '^>v<'

function unitOf(word: string, at: Place): Unit {
  const letters = word.replace(/[^a-e]/g, '')
  const [a, b, c, d] = letters as unknown as [string, string, string, string]
  const strips = Object.fromEntries([...letters].map((fabric, index) => [`strip${index + 1}`, fabric]))
  if (word === a) return plain(a, at)
  if (word === letters) return box('hourglass', at, [1, 1], 0, { top: a, right: b, bottom: c, left: d })
  if (word.includes('/')) return box('hst', at, [1, 1], 0, { upper: a, lower: b })
  if (word.includes('\\')) return box('hst', at, [1, 1], 1, { upper: b, lower: a })
  if (word.includes('|')) return box('strips', at, [1, 1], 0, strips)
  if (word.includes('-')) return box('strips', at, [1, 1], 1, strips)
  const turn = TIPS.indexOf(word[1] as string)
  return box('goose', at, turn % 2 === 0 ? [2, 1] : [1, 2], turn, { goose: a, leftWing: b, rightWing: c ?? b })
}

function moved(units: readonly Unit[], [x, y]: Place, times = 1): Unit[] {
  const move = (point: FilePoint): Place => [Number(point[0]) * times + x, Number(point[1]) * times + y]
  const grow = (size: FilePoint): Place => [Number(size[0]) * times, Number(size[1]) * times]
  return units.map((unit) =>
    unit.kind === 'polygon' ? { ...unit, corners: unit.corners.map(move) } : { ...unit, at: move(unit.at), size: grow(unit.size) },
  )
}

/** A quarter turn clockwise of a square as wide as `side`. */
function turned(unit: Unit, side: number): Unit {
  const turn = ([x, y]: FilePoint): Place => [side - Number(y), Number(x)]
  if (unit.kind === 'polygon') return { ...unit, corners: unit.corners.map(turn) }
  const [w, h] = place(unit.size)
  const [x, y] = turn(unit.at)
  return { ...unit, at: [x - h, y], size: [h, w], turn: (((unit.turn ?? 0) + 1) % 4) as 0 }
}

/** What `draw` gives for each of four fabrics, a quarter turn further each time. */
function around(side: number, draw: (fabric: string) => readonly Unit[], fabrics: readonly string[] = ['b', 'b', 'b', 'b']): Unit[] {
  return fabrics.flatMap((fabric, times) =>
    Array.from({ length: times }).reduce<readonly Unit[]>((units) => units.map((unit) => turned(unit, side)), draw(fabric)),
  )
}

/** A half-square triangle whose upper half is two quarters, from three free patches. */
function split(half: string, top: string, left: string): Unit[] {
  return [free(half, [1, 0], [1, 1], [0, 1]), free(top, [0, 0], [1, 0], [0.5, 0.5]), free(left, [0, 0], [0.5, 0.5], [0, 1])]
}

/** What `draw` gives for the squares of one colour on a board of `count` squares a side, each `size` cells wide, from the top left. */
function checkered(count: number, size: number, draw: (at: Place) => readonly Unit[]): Unit[] {
  const places = Array.from({ length: count * count }, (_, index): Place => [index % count, Math.floor(index / count)])
  return places.flatMap(([x, y]) => ((x + y) % 2 === 0 ? draw([x * size, y * size]) : []))
}

const fourPatch = (at: Place): Unit[] => cellsAt(at)`
  a b
  b a`

const nine = (at: Place): Unit[] => cellsAt(at)`
  b a b
  a b a
  b a b`

export const ninePatch = (cell: number): Block => block('Nine Patch', [3, 3], cell, nine(WHOLE))

export const churnDash = (cell: number | string): Block => pieced('Churn Dash', [3, 3], cell, { hst: 'plain' })`
  a/b  a-b  b\a
  a|b   a   b|a
  a\b  b-a  b/a`

export const shooFly = (): Block => pieced('Shoo Fly', [3, 3], 4)`
  b/a   b   a\b
   b    c    b
  b\a   b   a/b`

export const friendshipStar = (cell: number, hst: Method): Block => pieced('Friendship Star', [3, 3], cell, { hst })`
   a   a/b   a
  a\b   c   b\a
   a   b/a   a`

export const ohioStar = (cell: number | string, hourglass: Method): Block => pieced('Ohio Star', [3, 3], cell, { hourglass })`
   a   abab   a
  baba  b   baba
   a   abab   a`

export const jacobsLadder = (): Block => {
  const triangles = cellsAt(WHOLE, 2)`
     .   a/c   .
    a/c   .   c/a
     .   c/a   .`
  return block("Jacob's Ladder", [6, 6], 2, [...triangles, ...checkered(3, 2, fourPatch)])
}

export const cardTrick = (): Block => {
  const sides = around(3, (card) => [...cells`a/${card}`, ...moved(split(card, 'a', card), [1, 0])], ['b', 'c', 'd', 'e'])
  return block('Card Trick', [3, 3], 3, [...sides, ...cellsAt([1, 1])`bcde`], { hst: 'plain' })
}

export const doubleNinePatch = (): Block => {
  const plains = cellsAt(WHOLE, 3)`
    . a .
    a . a
    . a .`
  return block('Double Nine Patch', [9, 9], 1, [...plains, ...checkered(3, 3, nine)])
}

export const sawtoothStar = (cell: number | string, goose: Method): Block => {
  const round = cells`
     a   avb   .   a
    a>b   .    .  a<b
     .    .    .   .
     a   a^b   .   a`
  return block('Sawtooth Star', [4, 4], cell, [...round, plain('b', [1, 1], [2, 2])], { goose })
}

export const pinwheel = (): Block => pieced('Pinwheel', [2, 2], 3)`
  a\b  a/b
  b/a  b\a`

/** The long seam runs from top left to bottom right. */
const splitTowardCentre = split('a', 'c', 'b').map((unit) => turned(unit, 1))

export const doublePinwheel = (): Block =>
  block(
    'Double Pinwheel',
    [2, 2],
    3,
    around(2, () => splitTowardCentre),
  )

export const pinwheelStar = (): Block => {
  const quarters = around(4, () => [...cells`a avd`, ...moved(splitTowardCentre, [1, 1])])
  return block('Pinwheel Star', [4, 4], 3, quarters, { goose: 'plain' })
}

export const brokenDishes = (): Block => pieced('Broken Dishes', [2, 2], '2 1/8')`
  a\b  b/a
  a/c  c\a`

export const brokenDishesOfSixteen = (): Block => pieced('Broken Dishes of sixteen', [4, 4], 2, { hst: 'plain' })`
  a\b  b/a  a\b  b/a
  a/b  b\a  a/b  b\a
  a\b  b/a  a\b  b/a
  a/b  b\a  a/b  b\a`

export const dutchmansPuzzle = (cell: number | string, goose: Method): Block => pieced("Dutchman's Puzzle", [4, 4], cell, { goose })`
  c>a  d>a  cva   .
   .    .   dva   .
  d^a   .   d<a  c<a
  c^a   .    .    .`

/** `leg` is how much of a cell the knot's corner takes. */
export const bowTie = (cell: number | string, leg: number | string): Block => {
  const corners = [knotted([1, 0], 'bottomLeft', leg), knotted([0, 1], 'topRight', leg)]
  return block('Bow Tie', [2, 2], cell, [plain('b', [0, 0]), ...corners, plain('b', [1, 1])])
}

export const bowTieWithKnot = (): Block => {
  const tie = around(4, (fabric) => [free(fabric, [0, 0], [2, 0], [2, 1], [1, 2], [0, 2])], ['b', 'a', 'b', 'a'])
  return block('Bow Tie with a set-in knot', [4, 4], '2 1/4', [...tie, free('b', [2, 1], [3, 2], [2, 3], [1, 2])])
}

export const railFence = (): Block => pieced('Rail Fence', [1, 1], 6)`a-b-c`

export const railFenceOfFour = (): Block => pieced('Rail Fence of four', [2, 2], 6, { strips: 'strip-set' })`
  a-b-c  a|b|c
  a|b|c  a-b-c`

/** A paw in the top left corner: claws along its two outer sides. `claw` is the width of one. */
const paw = (pad: string, claw: number): Unit[] => {
  const claws = cellsAt(WHOLE, claw)`
     a          ${pad}\a   ${pad}\a
    a\${pad}    .          .
    a\${pad}    .          .`
  return [...claws, plain(pad, [claw, claw], [2 * claw, 2 * claw])]
}

/** Paws with sashes between them: widths in cells. */
function bearsPaw(cell: number | string, claw: number, sash: number, hst: Method): Block {
  const side = 6 * claw + sash
  const arms = around(side, () => [...paw('b', claw), plain('a', [3 * claw, 0], [sash, 3 * claw])])
  return block("Bear's Paw", [side, side], cell, [...arms, plain('b', [3 * claw, 3 * claw], [sash, sash])], { hst })
}
export const bearsPawOnSeven = (): Block => bearsPaw(2, 1, 1, 'plain')
/** Claws 1 3/4 in wide and sashes 1 1/2 in: quarter inches for cells. */
export const bearsPawWithNarrowSash = (): Block => bearsPaw('1/4', 7, 6, 'hst-8')

export const bearTracks = (): Block => {
  const paws = around(6, (pad) => paw(pad, 1), ['b', 'c', 'd', 'e'])
  return block('Bear Tracks', [6, 6], 2, paws, { hst: 'plain' })
}

/** Two light logs, two dark ones, round and round. */
export const logCabin = (): Block => {
  const logs = [0, 1, 2].flatMap((round) => {
    const [near, far, length] = [2 - round, 5 + round, 2 + 2 * round]
    return [
      plain('a', [far, near + 1], [1, length]),
      plain('a', [near + 1, near], [length + 1, 1]),
      plain('c', [near, near], [1, length + 1]),
      plain('c', [near, far], [length + 2, 1]),
    ]
  })
  return block('Log Cabin', [8, 8], '1 1/4', [plain('d', [3, 3], [2, 2]), ...logs])
}

/** Pairs of logs top and bottom, then at the sides. */
export const courthouseSteps = (): Block => {
  const logs = [0, 1, 2, 3].flatMap((round) => {
    const [near, far, length] = [3 - round, 6 + round, 2 + 2 * round]
    const fabric = round % 2 === 0 ? 'a' : 'c'
    return [
      plain(fabric, [near + 1, near], [length, 1]),
      plain(fabric, [near + 1, far], [length, 1]),
      plain(fabric, [near, near], [1, length + 2]),
      plain(fabric, [far, near], [1, length + 2]),
    ]
  })
  return block('Courthouse Steps', [10, 10], 1, [plain('b', [4, 4], [2, 2]), ...logs])
}

const FOUR_CORNERS = { topLeft: 'b', topRight: 'b', bottomRight: 'b', bottomLeft: 'b' }

export const squareInASquare = (side: number): Block =>
  block('Square in a Square', [1, 1], side, [box('diamond', WHOLE, [1, 1], 0, { centre: 'a', ...FOUR_CORNERS })], { diamond: 'corner-flip' })

/** A round of four triangles on a board of four by four cells; two fabrics by turns. */
const corners = (fabrics: string): Unit[] => around(4, (fabric) => [free(fabric, [0, 0], [2, 0], [0, 2])], [...fabrics])
const onPoint = (fabrics: string): Unit[] => around(4, (fabric) => [free(fabric, [1, 1], [2, 0], [3, 1])], [...fabrics])
const innerCorners = (fabrics: string): Unit[] => around(4, (fabric) => [free(fabric, [1, 1], [2, 1], [1, 2])], [...fabrics])

export const economy = (): Block => block('Economy block', [4, 4], '1 3/4', [plain('b', [1, 1], [2, 2]), ...onPoint('aaaa'), ...corners('cccc')])

export const snailsTrail = (): Block => {
  const centre = around(4, (fabric) => [free(fabric, [2, 1], [2.5, 1.5], [2, 2], [1.5, 1.5])], [...'abab'])
  return block("Snail's Trail", [4, 4], 3, [...centre, ...innerCorners('abab'), ...onPoint('abab'), ...corners('abab')])
}

/** A centre with four rectangles whirling round it: their width and height in cells. */
function whirl(name: string, cell: number | string, [w, h]: Place): Block {
  const frame = around(w + h, (fabric) => [plain(fabric, WHOLE, [w, h])], [...'bcbc'])
  return block(name, [w + h, w + h], cell, [...frame, plain('a', [h, h], [w - h, w - h])])
}
export const brightHopes = (cell: number | string): Block => whirl('Bright Hopes', cell, [2, 1])
export const brightHopesWithLargeCentre = (): Block => whirl('Bright Hopes', '1 1/2', [3, 1])
export const framedSquare = (): Block => whirl('Framed square', '1/2', [13, 5])
export const halfSeam = (): Block => whirl('Half-seam block', 3, [3, 2])

/** Each unit's pair of squares lies at its outer end: where it touches the centre, straight seams run through from side to side. */
export const hartfordHope = (): Block => {
  const ring = around(5, (fabric) => [plain(fabric, WHOLE), plain('c', [0, 1]), ...cellsAt([1, 0], 2)`abab`])
  return block('Hartford Hope', [5, 5], 2, [...ring, plain('d', [2, 2])], { hourglass: 'plain' })
}

/** Right triangles with legs in the ratio of one to two, so that every corner lies on the grid. */
export const wovenRibbons = (): Block => {
  const ribbons = around(5, (fabric) => [free(fabric, [0, 0], [5, 0], [4, 2])], [...'bcbc'])
  return block('Woven Ribbons', [5, 5], '1 4/5', [...ribbons, free('a', [2, 1], [4, 2], [3, 4], [1, 3])])
}

export const atticWindowsMitred = (): Block => {
  const side = free('b', [0, 0], [4, 0], [4, 7], [0, 11])
  const sill = free('c', [4, 7], [11, 7], [11, 11], [0, 11])
  return block('Attic Windows, mitred', [11, 11], '1/2', [plain('a', [4, 0], [7, 7]), side, sill])
}

export const atticWindows = (): Block => {
  const window = [plain('a', [1, 0], [3, 3]), plain('b', [0, 0], [1, 3]), plain('c', [1, 3], [3, 1])]
  return block('Attic Windows', [4, 4], 2, [...window, ...cellsAt([0, 3])`b\c`], { hst: 'plain' })
}

/** Seven to eight is within a fiftieth of a hexagon's true proportion; the corners fill it up to a rectangle. */
export const tumblingBlocks = (): Block =>
  block('Tumbling Blocks', [7, 8], 1, [
    free('a', [3.5, 0], [7, 2], [3.5, 4], [0, 2]),
    free('b', [0, 2], [3.5, 4], [3.5, 8], [0, 6]),
    free('c', [3.5, 4], [7, 2], [7, 6], [3.5, 8]),
    free('d', [0, 0], [3.5, 0], [0, 2]),
    free('d', [3.5, 0], [7, 0], [7, 2]),
    free('d', [7, 6], [7, 8], [3.5, 8]),
    free('d', [3.5, 8], [0, 8], [0, 6]),
  ])

/** Five to seven is within a fiftieth of the true proportion of corner square and side triangle. */
export const leMoyneStar = (): Block => {
  const quarters = around(17, () => [
    plain('a', WHOLE, [5, 5]),
    free('a', [5, 0], [12, 0], [8.5, 3.5]),
    free('b', [5, 0], [8.5, 3.5], [8.5, 8.5], [5, 5]),
    free('c', [8.5, 3.5], [12, 0], [12, 5], [8.5, 8.5]),
  ])
  return block('LeMoyne Star', [17, 17], '12/17', quarters)
}

export const leMoyneStarOfSixteen = (): Block => pieced('LeMoyne Star in sixteen patches', [4, 4], 3)`
   a   b\a  a/c   a
  a\c  c\b  c/b  b/a
  a/b  b/c  b\c  c\a
   a   a\c  b/a   a`

export const starOfBethlehem = (): Block => {
  const quarters = around(4, () => [...cells`a avb`, free('c', [1, 1], [3, 1], [2.5, 1.5], [1.5, 1.5])])
  return block('Star of Bethlehem', [4, 4], 3, [...quarters, plain('d', [1.5, 1.5])])
}

export const cakeStand = (): Block => {
  const small = cells`
     a   a/b  a/b   .
    a/b   .    .    .
    a/b   .    .   b/a
     .    .   b/a   a`
  return block('Cake Stand', [4, 4], 3, [...small, ...cellsAt([1, 1], 2)`c/b`, plain('a', [3, 0], [1, 2]), plain('a', [0, 3], [2, 1])])
}

export const snowball = (): Block =>
  block('Snowball', [3, 3], 2, [{ ...box('cornered', WHOLE, [3, 3], 0, { centre: 'a', ...FOUR_CORNERS }), corner: 1 }])

export const hourglass = (): Block => pieced('Hourglass', [1, 1], 2)`abab`

export const doubleHourglass = (cell: number | string): Block => pieced('Double Hourglass', [2, 2], cell)`
  abab  c
   c   baba`

export const irishChain = (): Block => {
  const triangles = cellsAt(WHOLE, 2)`
     .   a/c   .   a/c
    a/c   .   a/c   .
     .   a/c   .   a/c
    a/c   .   a/c   .`
  return block('Single Irish Chain', [8, 8], 1.5, [...triangles, ...checkered(4, 2, fourPatch)])
}

export const grandmothersChoice = (): Block => {
  const arms = around(5, (fabric) => {
    const corner = cells`
         a        ${fabric}\a
      a\${fabric}  ${fabric}`
    return [...corner, plain('c', [2, 0], [1, 2])]
  })
  return block("Grandmother's Choice", [5, 5], 2, [...arms, plain('d', [2, 2])])
}
