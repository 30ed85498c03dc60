/** What 1,000 steps to undo cost on a block of 400 units: memory, and bytes in the database. */
import { serialize, setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { type Edit, moveUnits, placeUnit, recolourPatch, removeUnits, setName, turnUnits } from '../../geometry/index.ts'
import { applyEdit, type History, newHistory } from '../../web/document/history.ts'
import { manyUnits } from './blocks.ts'

const STEPS = 1000
const MB = 1_000_000
const block = manyUnits(20)
const all = block.units.map(({ id }) => id)
const unit = (step: number) => block.units[(step * 37) % 400] as (typeof block.units)[number]

/** What a hand does one at a time, in turn. */
function singly(step: number): Edit {
  const one = unit(step)
  const edits = [
    turnUnits([one.id]),
    recolourPatch(one.id, Object.keys(one.fabrics)[0] as string, step % 8 < 4 ? 'plum' : 'clay'),
    moveUnits([one.id], step % 8 < 4 ? '1/3' : '-1/3', 0),
    step % 8 === 3 ? removeUnits([one.id]) : step % 8 === 7 ? placeUnit({ ...one, id: `new${step}` }) : setName(`Step ${step}`),
  ]
  return edits[step % 4] as Edit
}

const everything = (step: number): Edit => moveUnits(all, step % 2 === 0 ? '1/3' : '-1/3', 0)

const DAYS: readonly (readonly [string, (step: number) => Edit])[] = [
  ['one unit at a time', singly],
  ['every tenth step moves all 400', (step) => (step % 10 === 9 ? everything(step) : singly(step))],
  ['every step moves all 400', everything],
]

export function undoCosts(): void {
  console.log(`\n${STEPS} steps to undo on 400 units        MB of memory   MB in the database`)
  for (const [name, edit] of DAYS) {
    const before = memory()
    const history = worked(edit)
    const used = memory() - before
    const kept = [...history.past].reduce((sum, step) => sum + serialize(step).length, serialize(history.block).length)
    console.log(`${name.padEnd(34)} ${(used / MB).toFixed(2).padStart(16)} ${(kept / MB).toFixed(2).padStart(20)}`)
  }
}

function worked(edit: (step: number) => Edit): History {
  let history = newHistory(block)
  // An edit of a unit that is gone is no step.
  for (let step = 0; history.past.length < STEPS; step++) history = applyEdit(history, edit(step))
  return history
}

/** Bytes in use once all that is not needed is gone. */
function memory(): number {
  setFlagsFromString('--expose-gc')
  const collect = runInNewContext('gc') as () => void
  collect()
  collect()
  return process.memoryUsage().heapUsed
}
