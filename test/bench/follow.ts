/**
 * What one edit costs where findings follow the hand, for 16, 64, 400 and 10,000 units: processor time of each type of edit, beside the findings of the same
 * block from nothing.
 *
 * The machine may be shared, so the floor stands in the same run: what it costs to write out the findings as text once.
 */
import { type Block, findings, liveFindings, type Unit } from '../../geometry/index.ts'
import { manyUnits, turned } from './blocks.ts'

const RUNS = 15

type Change = (block: Block, turn: number) => Block

const place = (block: Block, turn: number): number => (turn * 41) % block.units.length
const withUnits = (block: Block, units: readonly Unit[]): Block => ({ ...block, units })
const atPlace = (block: Block, turn: number, change: (unit: Unit) => Unit): Block =>
  withUnits(
    block,
    block.units.map((unit, index) => (index === place(block, turn) ? change(unit) : unit)),
  )

const CHANGES: Readonly<Record<string, Change>> = {
  recolour: (block, turn) =>
    atPlace(block, turn, (unit) => ({
      ...unit,
      fabrics: Object.fromEntries(Object.keys(unit.fabrics).map((name, index) => [name, block.fabrics[(turn + index) % 4]?.id as string])),
    })),
  turn: (block, turn) => turned(block, place(block, turn)),
  move: (block, turn) =>
    atPlace(block, turn, (unit) => (unit.kind === 'polygon' ? unit : { ...unit, at: [Number(unit.at[0]) + (turn % 2 === 0 ? 1 : -1), unit.at[1]] })),
  remove: (block, turn) =>
    withUnits(
      block,
      block.units.filter((_, index) => index !== place(block, turn)),
    ),
  'place again': (block, turn) => {
    const unit = block.units[place(block, turn)] as Unit
    return withUnits(block, [...block.units.filter((one) => one !== unit), { ...unit, id: `${unit.id}.${turn}` }])
  },
}

export function editsFollowed(): void {
  for (const n of [4, 8, 20, 100]) {
    const block = manyUnits(n)
    const fromNothing = best(() => findings(block), 3)
    const floor = best(() => JSON.stringify(findings(block)), 3) - fromNothing
    console.log(
      `\nFindings of ${n * n} units: from nothing ${fromNothing.toFixed(1)} ms of processor time; written out as text ${Math.max(floor, 0).toFixed(1)} ms more`,
    )
    for (const [name, change] of Object.entries(CHANGES)) console.log(`  after one edit (${name}): ${told(block, change, fromNothing)}`)
  }
}

function told(start: Block, change: Change, fromNothing: number): string {
  const follow = liveFindings()
  follow(start)
  const times = Array.from({ length: RUNS }, (_, turn) => {
    const after = change(start, turn)
    const time = processorTime(() => follow(after))
    follow(start)
    return time
  }).sort((a, b) => a - b)
  const [least, middle] = [times[0] as number, times[RUNS >> 1] as number]
  return `${least.toFixed(1)} ms at best, ${middle.toFixed(1)} ms in the middle, 1/${(fromNothing / least).toFixed(1)} of the time from nothing`
}

const best = (work: () => unknown, runs: number): number => Math.min(...Array.from({ length: runs }, () => processorTime(work)))

/** Milliseconds, what collecting the rest costs included. */
function processorTime(work: () => unknown): number {
  const before = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1000
}
