/**
 * `npm run bench`: how the time of a report grows with the block, and how long an edit waits for its findings.
 *
 * Out     the middle time of several runs for blocks of n × n units, and its ratio to n² log n, taken as 1 at the smallest: a ratio that
 *         stays level or falls means growth no faster than that. Then one edit on 400 units: the report alone, and in the app to the painted frame.
 *         Last, pressing and subdividing beside general solvers of the same questions.
 * Times depend on the machine and so are printed, never asserted.
 */
import { report } from '../../geometry/index.ts'
import { manyUnits, turned } from './blocks.ts'
import { editInBrowser } from './frame.ts'
import { besidePeers } from './peers.ts'

const SIZES = [10, 20, 40, 70, 100]
const RUNS = 5
const FRAME = 1000 / 60

function middleTime(run: (turn: number) => void, runs: number): number {
  const times = Array.from({ length: runs }, (_, turn) => {
    const start = performance.now()
    run(turn)
    return performance.now() - start
  })
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)] as number
}

// The engine compiles what it has seen often; the first runs are not what a maker waits for.
middleTime(() => report(manyUnits(10)), 10)

console.log('Report of n × n units')
console.log('    n    units      ms   ratio to n² log n (the first taken as 1)')
const growth = (n: number): number => n * n * Math.log(n)
let first = 0
for (const n of SIZES) {
  const block = manyUnits(n)
  const time = middleTime(() => report(block), n > 50 ? 3 : RUNS)
  first ||= time / growth(n)
  console.log(`${String(n).padStart(5)} ${String(n * n).padStart(8)} ${time.toFixed(1).padStart(7)}   ${(time / growth(n) / first).toFixed(2)}`)
}

const before = manyUnits(20)
const edit = middleTime((turn) => report(turned(before, (turn * 37) % 400)), 15)
console.log(`\nReport after one edit on 400 units: ${edit.toFixed(1)} ms, ${(edit / FRAME).toFixed(2)} of a frame of ${FRAME.toFixed(1)} ms`)

const seen = await editInBrowser(before)
if (seen === null) console.log('No browser found: the frame is not measured.')
else console.log(`In the app: findings ${seen.findings.toFixed(1)} ms after the key, the frame that shows them ${seen.frame.toFixed(1)} ms after it`)

await besidePeers()
