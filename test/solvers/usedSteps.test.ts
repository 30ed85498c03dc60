/** The steps that walks take off a demand, against the plain way: take each step of the walk off a list of what is wanted, one at a time. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { usedBy, type Walk } from '../../geometry/solvers/fractionalCover.ts'

const NODES = 3

it('walks use each of their four steps as often as it is wanted, in order, and no other walk changes that', () => {
  const node = fc.integer({ min: 0, max: NODES - 1 })
  const walk = fc.tuple(node, node, node, node) as fc.Arbitrary<Walk>
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 3 }), { minLength: NODES * NODES, maxLength: NODES * NODES }),
      fc.array(walk, { maxLength: 5 }),
      (wanted, walks) => {
        const { steps, starts } = usedBy({ nodes: NODES, steps: Int32Array.from(wanted) }, walks)
        const found = walks.map((_, index) => [...steps.slice(starts[index], starts[index + 1])])
        expect(found).toEqual(walks.map((one) => takenOff(wanted, one)))
      },
    ),
  )
})

function takenOff(wanted: readonly number[], walk: Walk): number[] {
  const left = [...wanted]
  const taken: number[] = []
  walk.forEach((from, side) => {
    const step = from * NODES + (walk[(side + 1) % 4] as number)
    if ((left[step] as number) === 0) return
    left[step] = (left[step] as number) - 1
    taken.push(step)
  })
  return taken.sort((a, b) => a - b)
}
