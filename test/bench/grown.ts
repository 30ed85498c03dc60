/** One report in a process of its own: `run.ts` starts it with a size, and is told its time and the most memory the process took. `idle` only holds the block. */
import { report } from '../../geometry/index.ts'
import { manyUnits } from './blocks.ts'

const [size, idle] = process.argv.slice(2)
const small = manyUnits(10)
for (let warm = 0; warm < 5; warm++) report(small)
const block = manyUnits(Number(size))
const start = performance.now()
const patches = idle === 'idle' ? 0 : report(block).patches.length
process.send?.({ time: performance.now() - start, patches, memory: process.resourceUsage().maxRSS * 1024 }, () => process.exit())
