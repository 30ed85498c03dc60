/**
 * Traditional blocks against what is printed of them: units, assembly, cut lists, pressing.
 *
 * Source  its tag (see `SOURCES.md`) stands beside each block. Where a page prints only a name, the layout is from memory.
 */
import { describe, expect, it } from 'vitest'
import type { Block, PressRequest } from '../../geometry/values/block.ts'
import { ORDERS } from '../../geometry/values/block.ts'
import { sayLength } from '../../geometry/exact/lengths.ts'
import { readBlock, report, writeBlock } from '../../geometry/index.ts'
import type { Join, Report } from '../../geometry/values/report.ts'
import * as draw from './blocks.ts'

interface Known {
  readonly block: Block
  readonly source: string
  /** Width and height, where a page prints them. */
  readonly finished?: string
  /** Kinds with their number and finished size; free patches are counted only. */
  readonly units: string
  /** Straight rows: how many items each has, from the top. */
  readonly rows?: string
  /** Pieces that are sewn as sections: number and unfinished size. */
  readonly pieces?: string
  /** Seams that are not straight: none where nothing is said. */
  readonly crooked?: string
  /** Seams that lie on each other whichever way the free ones are pressed: none where nothing is said. Worked out by hand, no source. */
  readonly clashes?: number
  /** All pieces but those cut by a template; `once` and `twice`: then cut corner to corner. */
  readonly cut?: string
}

// biome-ignore format: one block a line or two reads like the table it is
const KNOWN: readonly Known[] = [
  // Straight rows.
  { block: draw.ninePatch(2), source: 'S209', finished: '6 x 6', units: '9 square 2 x 2', rows: '3 3 3', cut: '9 x 2 1/2' },
  { block: draw.ninePatch(3), source: 'S210', finished: '9 x 9', units: '9 square 3 x 3', rows: '3 3 3', cut: '9 x 3 1/2' },
  { block: draw.churnDash(2), source: 'S182', finished: '6 x 6', units: '4 hst 2 x 2, 4 strips 2 x 2, 1 square 2 x 2', rows: '3 3 3',
    cut: '4 x 2 7/8 once, 8 x 1 1/2 x 2 1/2, 1 x 2 1/2' },
  { block: draw.shooFly(), source: 'S192', finished: '12 x 12', units: '4 hst 4 x 4, 5 square 4 x 4', rows: '3 3 3', cut: '4 x 4 7/8, 5 x 4 1/2' },
  { block: draw.friendshipStar(2, 'plain'), source: 'S190', finished: '6 x 6', units: '4 hst 2 x 2, 5 square 2 x 2', rows: '3 3 3',
    cut: '4 x 2 7/8 once, 5 x 2 1/2' },
  { block: draw.friendshipStar(4, 'hst-2'), source: 'S191', finished: '12 x 12', units: '4 hst 4 x 4, 5 square 4 x 4', rows: '3 3 3',
    cut: '4 x 4 7/8, 5 x 4 1/2' },
  { block: draw.ohioStar(4, 'plain'), source: 'S197', finished: '12 x 12', units: '4 hourglass 4 x 4, 5 square 4 x 4', rows: '3 3 3',
    cut: '4 x 5 1/4 twice, 5 x 4 1/2' },
  { block: draw.ohioStar('3 1/2', 'qst-2'), source: 'S199', finished: '10 1/2 x 10 1/2', units: '4 hourglass 3 1/2 x 3 1/2, 5 square 3 1/2 x 3 1/2',
    rows: '3 3 3', cut: '4 x 4 3/4, 5 x 4' },
  { block: draw.jacobsLadder(), source: 'S201', finished: '12 x 12', units: '4 hst 4 x 4, 20 square 2 x 2',
    cut: '20 x 2 1/2, 4 x 4 7/8' },
  { block: draw.cardTrick(), source: 'S214', finished: '9 x 9', units: '4 hst 3 x 3, 12 polygon, 1 hourglass 3 x 3' },
  { block: draw.doubleNinePatch(), source: 'S211', finished: '9 x 9', units: '45 square 1 x 1, 4 square 3 x 3',
    cut: '4 x 3 1/2, 20 x 1 1/2, 25 x 1 1/2' },
  { block: draw.sawtoothStar(2, 'corner-flip'), source: 'S194', finished: '8 x 8', units: '4 goose 4 x 2, 4 square 2 x 2, 1 square 4 x 4',
    rows: '3 3 3', cut: '1 x 4 1/2, 4 x 2 1/2 x 4 1/2, 12 x 2 1/2' },
  { block: draw.sawtoothStar(2, 'plain'), source: 'S195', finished: '8 x 8', units: '4 goose 4 x 2, 4 square 2 x 2, 1 square 4 x 4',
    rows: '3 3 3', cut: '1 x 5 1/4 twice, 4 x 2 7/8 once, 4 x 2 1/2, 1 x 4 1/2' },
  { block: draw.sawtoothStar('1 1/2', 'corner-flip'), source: 'S196', finished: '6 x 6',
    units: '4 goose 3 x 1 1/2, 4 square 1 1/2 x 1 1/2, 1 square 3 x 3', rows: '3 3 3', cut: '4 x 2, 4 x 2 x 3 1/2, 1 x 3 1/2, 8 x 2' },
  { block: draw.pinwheel(), source: 'S222', units: '4 hst 3 x 3', rows: '2 2' },
  { block: draw.doublePinwheel(), source: 'S84', finished: '6 x 6', units: '12 polygon', rows: '2 2' },
  { block: draw.pinwheelStar(), source: 'S223', finished: '12 x 12', units: '4 goose 6 x 3, 4 square 3 x 3, 12 polygon',
    cut: '1 x 7 1/4 twice, 4 x 3 7/8 once, 4 x 3 1/2' },
  { block: draw.brokenDishes(), source: 'S204', finished: '4 1/4 x 4 1/4', units: '4 hst 2 1/8 x 2 1/8', rows: '2 2', cut: '4 x 3' },
  { block: draw.brokenDishesOfSixteen(), source: 'S132', finished: '8 x 8', units: '16 hst 2 x 2', rows: '4 4 4 4', cut: '16 x 2 7/8 once' },
  { block: draw.bowTie(3, '1/2'), source: 'S207', finished: '6 x 6', units: '2 square 3 x 3, 2 cornered 3 x 3', rows: '2 2',
    cut: '4 x 3 1/2, 2 x 2' },
  { block: draw.bowTie('3 1/2', '3/7'), source: 'S208', finished: '7 x 7', units: '2 square 3 1/2 x 3 1/2, 2 cornered 3 1/2 x 3 1/2', rows: '2 2',
    cut: '4 x 4, 2 x 2' },
  { block: draw.bowTie('3/4', '1/3'), source: 'S133', finished: '1 1/2 x 1 1/2', units: '2 square 3/4 x 3/4, 2 cornered 3/4 x 3/4', rows: '2 2',
    cut: '4 x 1 1/4, 2 x 3/4' },
  { block: draw.railFence(), source: 'S212', finished: '6 x 6', units: '1 strips 6 x 6', cut: '3 x 2 1/2 x 6 1/2' },
  // Printed: 26 in, just the four cross-cuts. Ours adds the half inch that straightening the end takes.
  { block: draw.railFenceOfFour(), source: 'S213', finished: '12 x 12', units: '4 strips 6 x 6', rows: '2 2', cut: '3 x 2 1/2 x 26 1/2' },
  { block: draw.atticWindows(), source: 'S101', finished: '8 x 8', units: '1 square 6 x 6, 2 square 6 x 2, 1 hst 2 x 2', rows: '2 2',
    cut: '1 x 6 1/2, 2 x 2 1/2 x 6 1/2, 2 x 2 7/8 once' },
  { block: draw.leMoyneStarOfSixteen(), source: 'S106', finished: '12 x 12', units: '4 square 3 x 3, 12 hst 3 x 3', rows: '4 4 4 4' },
  { block: draw.doubleHourglass(1.5), source: 'S45', units: '2 hourglass 1 1/2 x 1 1/2, 2 square 1 1/2 x 1 1/2', rows: '2 2',
    cut: '2 x 2 3/4, 2 x 2' },
  { block: draw.doubleHourglass(3), source: 'S45', units: '2 hourglass 3 x 3, 2 square 3 x 3', rows: '2 2', cut: '2 x 4 1/4, 2 x 3 1/2' },
  { block: draw.irishChain(), source: 'S224', units: '8 hst 3 x 3, 32 square 1 1/2 x 1 1/2', pieces: '8 of 3 1/2 x 3 1/2' },
  { block: draw.grandmothersChoice(), source: 'S111, numbers from memory', units: '8 hst 2 x 2, 9 square 2 x 2, 4 square 4 x 2' },

  // Quarters and sections.
  // Pressed toward the wings, geese of neighbouring quarters lie alike at the four points where a tip meets a corner.
  { block: draw.dutchmansPuzzle(3, 'corner-flip'), source: 'S14', finished: '12 x 12', units: '8 goose 6 x 3', clashes: 4,
    pieces: '4 of 6 1/2 x 6 1/2', cut: '8 x 3 1/2 x 6 1/2, 16 x 3 1/2' },
  { block: draw.dutchmansPuzzle(2, 'geese-4'), source: 'S12', finished: '8 x 8', units: '8 goose 4 x 2', clashes: 4, pieces: '4 of 4 1/2 x 4 1/2',
    cut: '2 x 5 1/4, 8 x 2 7/8' },
  { block: draw.dutchmansPuzzle('2 1/2', 'geese-4'), source: 'S10', finished: '10 x 10', units: '8 goose 5 x 2 1/2', clashes: 4,
    pieces: '4 of 5 1/2 x 5 1/2', cut: '2 x 6 1/4, 8 x 3 3/8' },
  { block: draw.dutchmansPuzzle(4, 'geese-4'), source: 'S11', finished: '16 x 16', units: '8 goose 8 x 4', clashes: 4, pieces: '4 of 8 1/2 x 8 1/2',
    cut: '2 x 9 1/4, 8 x 4 7/8' },
  { block: draw.dutchmansPuzzle('1 1/2', 'geese-4'), source: 'S13', finished: '6 x 6', units: '8 goose 3 x 1 1/2', clashes: 4,
    pieces: '4 of 3 1/2 x 3 1/2', cut: '2 x 4 1/4, 8 x 2 3/8' },
  { block: draw.bearsPawOnSeven(), source: 'S186', finished: '14 x 14', units: '16 hst 2 x 2, 4 square 4 x 4, 5 square 2 x 2, 4 square 6 x 2',
    pieces: '4 of 6 1/2 x 6 1/2', cut: '16 x 2 7/8 once, 4 x 4 1/2, 4 x 2 1/2, 4 x 2 1/2 x 6 1/2, 1 x 2 1/2' },
  { block: draw.bearsPawWithNarrowSash(), source: 'S187', finished: '12 x 12',
    units: '16 hst 1 3/4 x 1 3/4, 4 square 3 1/2 x 3 1/2, 4 square 1 3/4 x 1 3/4, 4 square 5 1/4 x 1 1/2, 1 square 1 1/2 x 1 1/2',
    cut: '4 x 5 1/4, 4 x 4, 4 x 2 1/4, 4 x 2 x 5 3/4, 1 x 2' },
  { block: draw.bearTracks(), source: 'S189', finished: '12 x 12', units: '16 hst 2 x 2, 4 square 4 x 4, 4 square 2 x 2',
    pieces: '4 of 6 1/2 x 6 1/2', cut: '8 x 2 7/8 once, 4 x 2 1/2, 4 x 4 1/2, 8 x 2 7/8 once' },
  { block: draw.cakeStand(), source: 'S218', finished: '12 x 12', units: '1 hst 6 x 6, 6 hst 3 x 3, 2 square 3 x 3, 2 square 6 x 3' },

  // Round and round.
  { block: draw.logCabin(), source: 'S108', finished: '10 x 10',
    units: [
      '1 square 2 1/2 x 2 1/2, 1 square 2 1/2 x 1 1/4, 2 square 3 3/4 x 1 1/4, 2 square 5 x 1 1/4',
      '2 square 6 1/4 x 1 1/4, 2 square 7 1/2 x 1 1/4, 2 square 8 3/4 x 1 1/4, 1 square 10 x 1 1/4',
    ].join(', '),
    cut: '1 x 3, 1 x 1 3/4 x 3, 2 x 1 3/4 x 4 1/4, 2 x 1 3/4 x 5 1/2, 2 x 1 3/4 x 6 3/4, 2 x 1 3/4 x 8, 2 x 1 3/4 x 9 1/4, 1 x 1 3/4 x 10 1/2' },
  { block: draw.courthouseSteps(), source: 'S109', finished: '10 x 10',
    units: '1 square 2 x 2, 2 square 2 x 1, 4 square 4 x 1, 4 square 6 x 1, 4 square 8 x 1, 2 square 10 x 1',
    cut: '1 x 2 1/2, 2 x 1 1/2 x 2 1/2, 4 x 1 1/2 x 4 1/2, 4 x 1 1/2 x 6 1/2, 4 x 1 1/2 x 8 1/2, 2 x 1 1/2 x 10 1/2' },
  { block: draw.squareInASquare(6), source: 'S53', finished: '6 x 6', units: '1 diamond 6 x 6', cut: '1 x 6 1/2, 4 x 3 1/2' },
  { block: draw.economy(), source: 'S51', finished: '7 x 7', units: '1 square 3 1/2 x 3 1/2, 8 polygon', cut: '1 x 4' },
  { block: draw.snailsTrail(), source: 'S217', finished: '12 x 12', units: '16 polygon', pieces: '1 of 6 1/2 x 6 1/2' },
  { block: draw.snowball(), source: 'S57, S58, S59', finished: '6 x 6', units: '1 cornered 6 x 6', cut: '1 x 6 1/2, 4 x 2 1/2' },
  { block: draw.hourglass(), source: 'S42', finished: '2 x 2', units: '1 hourglass 2 x 2', cut: '2 x 3 1/4' },

  // A partial seam.
  { block: draw.brightHopesWithLargeCentre(), source: 'S95', finished: '6 x 6', units: '1 square 3 x 3, 4 square 4 1/2 x 1 1/2', crooked: '1 partial',
    cut: '1 x 3 1/2, 4 x 2 x 5' },
  { block: draw.brightHopes(2), source: 'S97', finished: '6 x 6', units: '1 square 2 x 2, 4 square 4 x 2', crooked: '1 partial',
    cut: '1 x 2 1/2, 4 x 2 1/2 x 4 1/2' },
  { block: draw.brightHopes(3), source: 'S96', finished: '9 x 9', units: '1 square 3 x 3, 4 square 6 x 3', crooked: '1 partial',
    cut: '1 x 3 1/2, 4 x 3 1/2 x 6 1/2' },
  { block: draw.brightHopes('1 1/2'), source: 'S98', finished: '4 1/2 x 4 1/2', units: '1 square 1 1/2 x 1 1/2, 4 square 3 x 1 1/2',
    crooked: '1 partial', cut: '1 x 2, 4 x 2 x 3 1/2' },
  { block: draw.framedSquare(), source: 'S91', finished: '9 x 9', units: '1 square 4 x 4, 4 square 6 1/2 x 2 1/2', crooked: '1 partial',
    cut: '1 x 4 1/2, 4 x 3 x 7' },
  { block: draw.halfSeam(), source: 'S92', finished: '15 x 15', units: '1 square 3 x 3, 4 square 9 x 6', crooked: '1 partial',
    cut: '1 x 3 1/2, 4 x 6 1/2 x 9 1/2' },
  { block: draw.hartfordHope(), source: 'S93, sizes from memory', units: '9 square 2 x 2, 4 hourglass 4 x 4', crooked: '1 partial' },
  { block: draw.wovenRibbons(), source: 'S90', finished: '9 x 9', units: '5 polygon', crooked: '1 partial' },

  // Set-in seams. Each inner point where three pieces meet wants one; a seam may bend at several such points on its way.
  { block: draw.atticWindowsMitred(), source: 'S102', finished: '5 1/2 x 5 1/2', units: '1 square 3 1/2 x 3 1/2, 2 polygon', crooked: '1 set-in',
    cut: '1 x 4' },
  { block: draw.tumblingBlocks(), source: 'S100', units: '7 polygon', crooked: '1 set-in' },
  // Eight such points; no seam but one through the middle passes two of them. Sizes to the nearest sixteenth: the true star has √2 in it.
  { block: draw.leMoyneStar(), source: 'S104, S105', finished: '12 x 12', units: '4 square 3 1/2 x 3 1/2, 12 polygon', crooked: '7 set-in' },
  // One seam round the centre passes all four.
  { block: draw.starOfBethlehem(), source: 'S107', units: '4 goose 6 x 3, 4 square 3 x 3, 1 square 3 x 3, 4 polygon', crooked: '1 set-in' },
  { block: draw.bowTieWithKnot(), source: 'S99', finished: '9 x 9', units: '5 polygon', crooked: '1 set-in' },
]

const NAMED = KNOWN.map((known) => ({ ...known, name: known.block.name }))
const cite = (source: string): string => `[${source}]`

/** `4 x 2 7/8 once, 5 x 2 1/2` as sizes with their number; a size named twice is added up. */
function tally(printed: string): Record<string, number> {
  const numbers: Record<string, number> = {}
  for (const entry of printed.split(', ')) {
    const [, number, what] = /^(\d+) (?:x |of )?(.+)$/.exec(entry) as unknown as [string, string, string]
    numbers[what] = (numbers[what] ?? 0) + Number(number)
  }
  return numbers
}

const counted = (rows: readonly (readonly [number, string])[]): Record<string, number> =>
  tally(rows.map(([number, what]) => `${number} ${what}`).join(', '))
const sizeOf = (lengths: readonly number[]): string => lengths.map((length) => sayLength(length, 'in')).join(' x ')
const upright = (lengths: readonly number[]): string => sizeOf([...lengths].sort((a, b) => a - b))
const lying = (lengths: readonly number[]): string => sizeOf([...lengths].sort((a, b) => b - a))

const THEN = { none: '', halve: ' once', quarter: ' twice' }
const unitsOf = ({ units }: Report): Record<string, number> =>
  counted(units.map(({ kind, count, finished }) => [count, kind === 'polygon' ? kind : `${kind} ${lying(finished)}`]))
const cutOf = ({ cut }: Report): Record<string, number> =>
  counted(
    cut.flatMap(({ shape, count, size, then }) =>
      shape === 'polygon' ? [] : [[count, `${shape === 'square' ? sizeOf([size[0]]) : upright(size)}${THEN[then]}`]],
    ),
  )
const piecesOf = ({ joins }: Report): Record<string, number> =>
  counted(joins.flatMap(({ stage, unfinished }) => (stage === 'section' && unfinished !== null ? [[1, sizeOf(unfinished)]] : [])))

/** Items of each row from the top: rows are joined by `block` seams, items by `row` seams. */
function rowsOf({ joins }: Report): string {
  const made = new Map(joins.map((join) => [join.id, join]))
  const stages = (piece: string, stage: Join['stage']): string[] => {
    const join = made.get(piece)
    return join?.stage === stage ? join.sides.flatMap((side) => stages(side, stage)) : [piece]
  }
  return stages((joins.at(-1) as Join).id, 'block')
    .map((row) => stages(row, 'row').length)
    .join(' ')
}

describe('what is printed of a block', () => {
  it.each(NAMED)('$name [$source]: a block file of the printed size and units', ({ block, finished, units, source }) => {
    expect(readBlock(writeBlock(block))).toEqual({ ok: true, value: block })
    const said = report(block)
    if (finished !== undefined) expect(sizeOf(said.block.finished), cite(source)).toBe(finished)
    expect(said.block.unfinished).toEqual(said.block.finished.map((length) => length + 0.5))
    expect(unitsOf(said), cite(source)).toEqual(tally(units))
  })

  it.each(NAMED.filter(({ crooked }) => crooked === undefined))('$name [$source]: straight seams by every order', ({ block, source }) => {
    for (const order of ORDERS) {
      const { joins, problems, patches } = report({ ...block, order })
      expect(joins, 'one seam less than patches').toHaveLength(patches.length - 1)
      expect(
        joins.filter(({ kind }) => kind !== 'straight'),
        cite(source),
      ).toEqual([])
      expect(problems, cite(source)).toEqual([])
    }
  })

  it.each(NAMED.filter(({ crooked }) => crooked !== undefined))('$name [$source]: $crooked', ({ block, crooked, source }) => {
    const { joins, problems, patches } = report(block)
    expect(joins, 'one seam less than patches').toHaveLength(patches.length - 1)
    const bent = joins.filter(({ kind }) => kind !== 'straight')
    expect(counted(bent.map(({ kind }) => [1, kind])), cite(source)).toEqual(tally(crooked as string))
    expect(problems.map(({ code }) => code)).toEqual(bent.map(() => 'not-straight'))
  })

  it.each(NAMED.filter(({ rows }) => rows !== undefined))('$name [$source]: rows of $rows', ({ block, rows, source }) => {
    expect(rowsOf(report({ ...block, order: 'rows' })), cite(source)).toBe(rows)
  })

  it.each(NAMED.filter(({ pieces }) => pieces !== undefined))('$name [$source]: sections, $pieces', ({ block, pieces, source }) => {
    expect(piecesOf(report({ ...block, order: 'sections' })), cite(source)).toMatchObject(tally(pieces as string))
  })

  it.each(NAMED.filter(({ cut }) => cut !== undefined))('$name [$source]: cut $cut', ({ block, cut, source }) => {
    expect(cutOf(report(block)), cite(source)).toEqual(tally(cut as string))
  })

  it.each(NAMED)('$name [$source]: nests but where it cannot, counts its clashes and mends each', ({ block, clashes: known }) => {
    const { pressing, meetings } = report(block)
    const clashes = meetings.filter(({ verdict }) => verdict === 'clashes')
    expect(clashes).toHaveLength(known ?? 0)
    expect(pressing.clashes).toBe(clashes.length)
    for (const { fix } of clashes) expect(fix.length).toBeGreaterThan(0)
  })
})

describe('the order of sewing', () => {
  /** Where each seam runs, for blocks whose every seam sews one more patch onto what is there. */
  function patchByPatch(block: Block): { seam: Join; runs: 'upright' | 'lying' | 'slanting'; patch: string }[] {
    const { joins, patches } = report(block)
    const names = new Map(patches.map(({ id, name }) => [id, name]))
    return joins.map((seam, index) => {
      const grown = index === 0 ? (seam.sides.find((side) => names.get(side) === 'centre') ?? seam.sides[0]) : (joins[index - 1] as Join).id
      const patch = seam.sides.find((side) => side !== grown) as string
      expect(seam.sides, 'grows by one patch').toContain(grown)
      const runs = seam.from[0] === seam.to[0] ? 'upright' : seam.from[1] === seam.to[1] ? 'lying' : 'slanting'
      return { seam, runs, patch: names.get(patch) as string }
    })
  }

  it('puts logs on one at a time, side after side round a log cabin [S109], sizes [S108]', () => {
    const sewn = patchByPatch(draw.logCabin())
    expect(sewn.map(({ runs }) => runs)).toEqual(sewn.map((_, index) => (index % 2 === 0 ? 'upright' : 'lying')))
    // After every second log the piece is square, and 1 1/4 in larger.
    expect(sewn.flatMap(({ seam }, index) => (index % 2 === 1 ? [sizeOf(seam.unfinished ?? [])] : []))).toEqual(
      ['4 1/4', '5 1/2', '6 3/4', '8', '9 1/4', '10 1/2'].map((side) => `${side} x ${side}`),
    )
  })

  it('puts on the top and bottom, then the sides, of courthouse steps [S109][S110]', () => {
    const sewn = patchByPatch(draw.courthouseSteps())
    expect(sewn.map(({ runs }) => runs)).toEqual(sewn.map((_, index) => (index % 4 < 2 ? 'lying' : 'upright')))
    expect(sewn.flatMap(({ seam }, index) => (index % 4 === 3 ? [sizeOf(seam.unfinished ?? [])] : []))).toEqual(
      ['4 1/2', '6 1/2', '8 1/2', '10 1/2'].map((side) => `${side} x ${side}`),
    )
  })

  it('sews opposite corners of a square in a square first [S55]', () => {
    const [first, second, third, fourth] = patchByPatch(draw.squareInASquare(6)).map(({ patch }) => patch)
    const opposite = new Set(['topLeft bottomRight', 'bottomRight topLeft', 'topRight bottomLeft', 'bottomLeft topRight'])
    expect(opposite).toContain(`${first} ${second}`)
    expect(opposite).toContain(`${third} ${fourth}`)
  })

  it.each([
    { block: draw.brightHopesWithLargeCentre(), source: 'S95' },
    { block: draw.brightHopes(2), source: 'S97' },
    { block: draw.brightHopes(3), source: 'S96' },
    { block: draw.framedSquare(), source: 'S91' },
    { block: draw.halfSeam(), source: 'S92' },
  ])('sews the first seam of $block.name partly, goes round, then finishes it [$source]', ({ block, source }) => {
    const { joins } = report(block)
    expect(
      joins.map(({ kind }) => kind),
      cite(source),
    ).toEqual(['partial', 'straight', 'straight', 'straight'])
    expect(joins[0]?.finishedAfter).toBe(joins[3]?.id)
  })

  it.each([
    { block: draw.atticWindowsMitred(), bends: [[4, 7]], source: 'S102', at: "the window's corner" },
    { block: draw.tumblingBlocks(), bends: [[3.5, 4]], source: 'S100', at: 'the point where three diamonds meet' },
  ])('bends the set-in seam of $block.name at $at [$source]', ({ block, bends, source }) => {
    expect(
      report(block).joins.flatMap(({ kind, via }) => (kind === 'set-in' ? via : [])),
      cite(source),
    ).toEqual(bends)
  })

  it('trims units to the printed size', () => {
    const trimmed = (block: Block): Record<string, number> =>
      counted(report(block).units.map(({ kind, count, unfinished }) => [count, `${kind} ${lying(unfinished)}`]))
    expect(trimmed(draw.cakeStand()), cite('S218')).toMatchObject(tally('1 hst 6 1/2 x 6 1/2, 6 hst 3 1/2 x 3 1/2'))
    expect(trimmed(draw.dutchmansPuzzle(2, 'geese-4')), cite('S12')).toEqual(tally('8 goose 4 1/2 x 2 1/2'))
    expect(trimmed(draw.brokenDishes()), cite('S204')).toEqual(tally('4 hst 2 5/8 x 2 5/8'))
  })
})

describe('printed pressing', () => {
  /** The block with the seams between its units pressed the way the arrows point, row by row; units are `unit` cells wide. */
  function arrows(block: Block, rows: readonly string[], unit: number): Block {
    const press = rows.flatMap((row, y) =>
      [...row].map((arrow, x): PressRequest => {
        // A quarter of the way down, where no seam of the units ends.
        const [seam, level] = [(x + 1) * unit, (y + 0.25) * unit]
        return { at: [seam, level], toward: [seam + (arrow === '<' ? -unit / 4 : unit / 4), level] }
      }),
    )
    return { ...block, order: 'rows', press }
  }

  const verdicts = ({ meetings }: Report, unit: number): string[] =>
    meetings.flatMap(({ at: [x, y], verdict, seams }) => (Number(x) % unit === 0 && Number(y) % unit === 0 && seams.length === 2 ? [verdict] : []))

  // biome-ignore format: a table
  const PRINTED = [
    { block: draw.ninePatch(3), rows: ['<>', '><', '<>'], unit: 1, why: 'every row toward fabric A [S210]' },
    { block: draw.churnDash(2), rows: ['<>', '><', '<>'], unit: 1, why: 'toward the triangles or the centre square [S182]' },
    { block: draw.friendshipStar(4, 'hst-2'), rows: ['<>', '><', '<>'], unit: 1, why: 'toward the plain squares, so that row seams butt [S191]' },
    { block: draw.ohioStar('3 1/2', 'qst-2'), rows: ['<>', '><', '<>'], unit: 1, why: 'toward the plain squares [S199]' },
    { block: draw.doubleNinePatch(), rows: ['><', '<>', '><'], unit: 3, why: 'large rows toward the plain squares [S211]' },
    { block: draw.bowTie(3, '1/2'), rows: ['<', '>'], unit: 1, why: 'toward the plain tie squares, so the two halves nest [S207]' },
    { block: draw.bowTie('3 1/2', '3/7'), rows: ['<', '>'], unit: 1, why: 'toward the plain print square; halves then nest [S208]' },
  ]

  it.each(PRINTED)('$block.name nests: $why', ({ block, rows, unit, why }) => {
    const said = report(arrows(block, rows, unit))
    expect(said.problems).toEqual([])
    expect(said.joins.filter(({ press }) => press.rule === 'asked')).toHaveLength(rows.join('').length)
    expect(said.pressing.clashes, why).toBe(0)
    expect(verdicts(said, unit), why).toEqual(Array(rows.length === 3 ? 4 : 1).fill('nests'))
  })

  it.each(PRINTED)('$block.name clashes at each of those points with every row seam pressed one way [S81][S89]', ({ block, rows, unit }) => {
    const alike = rows.map((row) => '>'.repeat(row.length))
    const said = report(arrows(block, alike, unit))
    expect(verdicts(said, unit)).toEqual(Array(rows.length === 3 ? 4 : 1).fill('clashes'))
    expect(said.meetings.filter(({ verdict }) => verdict === 'clashes').every(({ fix }) => fix.length > 0)).toBe(true)
  })

  it('nests the two seams of an hourglass in its middle [S42]', () => {
    expect(report(draw.hourglass()).meetings.map(({ at, verdict }) => [at, verdict])).toEqual([[[0.5, 0.5], 'nests']])
  })

  it('nests the row seams and both pairs of slanting seams in the middle of a pinwheel [S85]', () => {
    expect(report(draw.pinwheel()).meetings.map(({ at, verdict }) => [at, verdict])).toEqual(Array(3).fill([[1, 1], 'nests']))
  })

  it('has no seams to match between the bars of turned rail fences [S212]', () => {
    expect(report(draw.railFenceOfFour()).meetings.map(({ at }) => at)).toEqual([[1, 1]])
  })

  it.each([
    { block: draw.dutchmansPuzzle(3, 'corner-flip'), source: 'S14' },
    { block: draw.dutchmansPuzzle(2, 'geese-4'), source: 'S12' },
    { block: draw.squareInASquare(6), source: 'S56, S55' },
  ])('presses the seams of $block.name toward the wings or outward [$source]', ({ block, source }) => {
    const { joins, patches } = report(block)
    const inner = new Set(patches.flatMap(({ id, name }) => (name === 'goose' || name === 'centre' ? [id] : [])))
    const own = joins.filter(({ stage }) => stage === 'unit')
    expect(own.length).toBeGreaterThan(0)
    for (const { sides, press } of own) {
      const under = press.toward === 'open' ? '' : sides[press.toward]
      expect(under.startsWith('p:') && !inner.has(under), cite(source)).toBe(true)
    }
  })

  it.each([
    { block: draw.brightHopesWithLargeCentre(), source: 'S95' },
    { block: draw.brightHopes(3), source: 'S96' },
    { block: draw.brightHopes('1 1/2'), source: 'S98' },
    { block: draw.framedSquare(), source: 'S91' },
  ])('presses every seam of $block.name toward the new rectangle [$source]', ({ block, source }) => {
    const { joins, patches } = report(block)
    const frame = new Set(patches.flatMap(({ id, fabric }) => (fabric === 'a' ? [] : [id])))
    for (const { sides, press } of joins) expect(frame, cite(source)).toContain(press.toward === 'open' ? 'open' : sides[press.toward])
  })
})
