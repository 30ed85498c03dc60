/**
 * The questions that a general solver answers too, each put to both sides from the same values.
 *
 * Pressing      ours: chains and rings. The peer: an integer-program solver, highs 1.15.3, reading the program included, writing it not.
 * Subdividing   ours: lines with what lies on their two sides. The peer: a polygon library, jsts 2.12.1, which cuts all outlines where they
 *               meet and gathers the faces between them. It would also take outlines that cross; none do here.
 */
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js'
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js'
import Polygonizer from 'jsts/org/locationtech/jts/operation/polygonize/Polygonizer.js'
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js'
import { type Laid, lay } from '../../geometry/block/lay.ts'
import type { Dot } from '../../geometry/plane/points.ts'
import { subdivide } from '../../geometry/plane/subdivide.ts'
import { press } from '../../geometry/pressing/press.ts'
import { sewBlock } from '../../geometry/report/report.ts'
import type { Plans } from '../../geometry/report/sewing.ts'
import type { Block } from '../../geometry/index.ts'
import { sequence } from '../help.ts'
import { type Problem, programOf, solved, tangle } from '../pressing/program.ts'
import { manyUnits } from './blocks.ts'

export type Side = 'ours' | 'peer'

export interface Run {
  readonly size: number
  /** In ms. */
  readonly time: number
  readonly answer: string
}

export interface Contest {
  readonly name: string
  readonly title: string
  readonly sizes: readonly number[]
  /** All that both sides are given, and each side's way from there to its answer. */
  readonly prepare: (size: number) => { readonly size: number } & Readonly<Record<Side, () => string>>
}

export const CONTESTS: readonly Contest[] = [
  {
    name: 'tangle',
    title: 'Pressing seams tied at random into chains and rings; the peer is an integer-program solver. Size: seams',
    sizes: [100, 1_000, 10_000],
    prepare: (size) => pressing(tangle(sequence(size), size, 0.98)),
  },
  {
    name: 'plan',
    title: 'Pressing the seams of a block; the peer is an integer-program solver. Size: seams',
    sizes: [100, 1_000, 10_000],
    prepare: (size) => {
      const { met, constraints } = (sewBlock({ ...blockOfPatches(size), order: 'rows' }, 'quick').plans as Plans).taken
      return pressing({ crossings: met.crossings, constraints })
    },
  },
  {
    name: 'plane',
    title: 'Subdividing the plane of a block; the peer is a general polygon library. Size: patches',
    sizes: [400, 2_500, 10_000],
    prepare: (size) => subdividing(lay(blockOfPatches(size))),
  },
]

export function contestNamed(name: string): Contest {
  const found = CONTESTS.find((contest) => contest.name === name)
  if (found === undefined) throw new Error(`impossible: no contest is called ${name}`)
  return found
}

/** A block of about so many patches, of which there are five to two units. */
const blockOfPatches = (patches: number): Block => manyUnits(Math.round(Math.sqrt(patches / 2.5)))

const cornersOf = ({ patches }: Laid): (readonly Dot[])[] => patches.map(({ corners }) => corners)

const outlineOf = ({ width, height }: Laid): Dot[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
]

function pressing(problem: Problem): ReturnType<Contest['prepare']> {
  const program = programOf([problem])
  const said = ({ clashes, against }: { clashes: number; against: number }): string => `${clashes} clashes, ${against} against preference`
  return {
    size: problem.constraints.length,
    ours: () => said(press(problem.crossings, problem.constraints)),
    peer: () => solved([problem], program).map(said).join(),
  }
}

function subdividing(laid: Laid): ReturnType<Contest['prepare']> {
  const patches = cornersOf(laid)
  return {
    size: patches.length,
    ours: () => {
      const { dots, edges, faults } = subdivide(patches, outlineOf(laid))
      // Points less edges plus faces is one for a plane in one piece: Euler.
      return faults.length === 0 ? `${1 - dots.length + edges.length} faces` : 'gaps or overlaps'
    },
    peer: () => {
      const factory = new GeometryFactory()
      const rings = patches.map((corners) => factory.createLineString([...corners, corners[0] as Dot].map(([x, y]) => new Coordinate(x, y))))
      const faces = new Polygonizer()
      faces.add(UnaryUnionOp.union(factory.createMultiLineString(rings)))
      return `${faces.getPolygons().size()} faces`
    },
  }
}
