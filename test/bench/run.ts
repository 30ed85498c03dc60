/**
 * `npm run bench`: how the time of a report grows with the block, and how long an edit waits for its findings.
 *
 * Out     for blocks of n × n units to 100,000 patches: the time, the exponent of its growth from one size to the next, and the memory. Then one edit on
 *         400 units: the findings alone, and in the app to the painted frame; settings of copies; counting layers; what 1,000 steps to undo cost.
 *         The canvas: redraws, picking, dragging, panning in a browser. Last, pressing, subdividing, routes, batches and cloth beside general solvers of the same questions.
 * In      which of these parts to run, by name (`npm run bench -- edits canvas`); all of them unless some are named.
 * Times depend on the machine and so are printed, never asserted.
 */
import { fork } from 'node:child_process'
import { liveFindings, layered, report, settingReport } from '../../geometry/index.ts'
import { manyUnits, turned } from './blocks.ts'
import { batchesBesidePeer } from './batches.ts'
import { canvasInBrowser } from './canvas.ts'
import { clothBesidePeer } from './cloth.ts'
import { editsFollowed } from './follow.ts'
import { editInBrowser } from './frame.ts'
import { besidePeers } from './peers.ts'
import { routesBesidePeer } from './route.ts'
import { undoCosts } from './undo.ts'

const SIZES = [20, 40, 70, 100, 140, 200]
const FRAME = 1000 / 60

interface Grown {
  readonly time: number
  readonly patches: number
  /** Bytes. */
  readonly memory: number
}

function grown(n: number, how: readonly string[]): Promise<Grown> {
  return new Promise((resolve, reject) => {
    const child = fork('test/bench/grown.ts', [String(n), ...how], { execArgv: ['--import', 'tsx'] })
    child.once('message', (told) => resolve(told as Grown))
    child.once('error', reject)
    child.once('exit', (status) => status !== 0 && reject(new Error(`a report of ${n} × ${n} units ended with status ${status}`)))
  })
}

function middleTime(run: (turn: number) => void, runs: number): number {
  const times = Array.from({ length: runs }, (_, turn) => {
    const start = performance.now()
    run(turn)
    return performance.now() - start
  })
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)] as number
}

const PARTS: Readonly<Record<string, () => void | Promise<void>>> = {
  growth,
  edits,
  layers,
  setting,
  frame,
  canvas: canvasInBrowser,
  undo: undoCosts,
  pressing: besidePeers,
  routes: routesBesidePeer,
  batches: batchesBesidePeer,
  cloth: clothBesidePeer,
}

async function growth(): Promise<void> {
  console.log('Report of n × n units, each in a process of its own')
  console.log('    n  patches      ms   exponent since the size before   bytes a patch beyond the block')
  let last: Grown | null = null
  for (const n of SIZES) {
    const idle = await grown(n, ['idle'])
    const runs = await Promise.all([grown(n, [])])
    const { time, patches, memory } = runs[0] as Grown
    const exponent = last === null ? '' : (Math.log(time / last.time) / Math.log(patches / last.patches)).toFixed(2)
    const bytes = (memory - idle.memory) / patches
    console.log(
      `${String(n).padStart(5)} ${String(patches).padStart(8)} ${time.toFixed(0).padStart(7)}   ${exponent.padEnd(28)}     ${bytes.toFixed(0)}`,
    )
    last = { time, patches, memory }
  }
}

function edits(): void {
  // The engine compiles what it has seen often; the first runs are not what a maker waits for.
  middleTime(() => report(manyUnits(10)), 10)
  const before = manyUnits(20)
  const follow = liveFindings()
  const edit = middleTime((turn) => follow(turned(before, (turn * 37) % 400)), 100)
  console.log(`\nFindings after one edit on 400 units: ${edit.toFixed(1)} ms, ${(edit / FRAME).toFixed(2)} of a frame of ${FRAME.toFixed(1)} ms`)
  editsFollowed()
}

function layers(): void {
  const before = manyUnits(20)
  const time = middleTime((turn) => layered(turned(before, (turn * 37) % 400)), 5)
  console.log(`With layers of cloth, beside the page: ${time.toFixed(0)} ms`)
}

function setting(): void {
  const star = manyUnits(4)
  for (const across of [3, 6, 12]) {
    const time = middleTime(() => settingReport(star, { columns: across, rows: across, turn: 'free', press: 'free' }), 3)
    const answer = settingReport(star, { columns: across, rows: across, turn: 'free', press: 'free' })
    const said = answer.ok
      ? `${answer.value.clashes.between} clashes, ${answer.value.proved ? 'proved' : `no fewer than ${answer.value.atLeast}`}`
      : answer.message
    console.log(`Setting of ${across} × ${across}, turns and pressings free: ${time.toFixed(0)} ms; ${said}`)
  }
}

async function frame(): Promise<void> {
  const seen = await editInBrowser(manyUnits(20))
  if (seen === null) console.log('No browser found: the frame is not measured.')
  else
    console.log(`In the app: findings ${seen.findings.toFixed(1)} ms after the key, the frame that shows them ${seen.frame.toFixed(1)} ms after it`)
}

const asked = process.argv.slice(2)
for (const name of asked) if (PARTS[name] === undefined) throw new Error(`no part is called ${name}; there are ${Object.keys(PARTS).join(', ')}`)
for (const [name, run] of Object.entries(PARTS)) if (asked.length === 0 || asked.includes(name)) await run()
