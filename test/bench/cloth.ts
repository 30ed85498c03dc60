/**
 * The least cloth for many different pieces beside a general solver of the same question, an integer-program solver, highs 1.15.3.
 *
 * In      pieces of different sizes in eighths of an inch, one of each, and a cloth 42 in wide.
 * Out     for each number of pieces our length at once and after about two seconds, what no cutting goes below, and the solver's length.
 * How     the solver has a process of its own and 60 seconds; what it has found by then counts, and a process that says nothing is ended. Reading the program
 *         is on its time, writing it is not. Sizes at which it proves its answer come first: there ours must be the same.
 */
import { fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { stripsFor } from '../../geometry/cutting/strips/stripsPerFabric.ts'
import { programOf, type Size, solvedWithin } from '../cutting/stripsProgram.ts'
import { sequence } from '../help.ts'

const SIZES = [5, 10, 20, 50, 100, 500]
const WIDTH = 42
const AT_ONCE = 2_000_000
const MINUTE = 60_000
/** The solver stops by itself a little before it would be stopped. */
const SECONDS = 50

interface Said {
  readonly length: number
  readonly proved: boolean
  /** In ms. */
  readonly time: number
}

export async function clothBesidePeer(): Promise<void> {
  console.log('\nThe least cloth for different pieces, lengths in inches; the peer is an integer-program solver. Size: pieces')
  console.log('     size   at once        ms     least        ms  no less than      peer        ms  peer / ours')
  for (const size of SIZES) {
    const pieces = different(size).map((one) => ({ size: one, count: 1 }))
    const [quick, least] = [AT_ONCE, undefined].map((steps) => timed(() => stripsFor(pieces, WIDTH, steps)))
    if (quick === undefined || least === undefined) throw new Error('impossible: two are asked for')
    const peer = await peerOf(size)
    const ours = `${say(size)} ${say(quick.found.length)} ${say(quick.time, 0)} ${say(least.found.length)} ${say(least.time, 0)} ${say(least.found.atLeast, 3, 13)}`
    const other =
      peer === null ? 'the peer has no cutting after a minute' : `${say(peer.length)} ${say(peer.time, 0)} ${say(peer.time / least.time, 1, 12)}`
    console.log(`${ours} ${other}${peer !== null && !peer.proved ? ' (not proved)' : ''}`)
  }
}

const say = (number: number, places = 3, wide = 9): string => (Number.isInteger(number) ? String(number) : number.toFixed(places)).padStart(wide)

function timed<T>(run: () => T): { found: T; time: number } {
  const start = performance.now()
  const found = run()
  return { found, time: performance.now() - start }
}

function different(count: number): Size[] {
  const next = sequence(count)
  const sizes = new Map<string, Size>()
  while (sizes.size < count) {
    const size: Size = [1.5 + Math.floor(next() * 84) / 8, 1.5 + Math.floor(next() * 52) / 8]
    sizes.set(size.join(), size)
  }
  return [...sizes.values()]
}

function peerOf(size: number): Promise<Said | null> {
  return new Promise((resolve, reject) => {
    const child = fork(fileURLToPath(import.meta.url), ['peer', String(size)], { execArgv: ['--import', 'tsx'], silent: true })
    let said: Said | null = null
    const limit = setTimeout(() => child.kill('SIGKILL'), MINUTE)
    child.on('message', (found) => {
      said = found as Said | null
    })
    child.on('error', reject)
    // A solver that runs out of memory has no answer either.
    child.on('exit', () => {
      clearTimeout(limit)
      resolve(said)
    })
  })
}

if (process.argv[1] === fileURLToPath(import.meta.url) && process.argv[2] === 'peer') {
  const program = programOf(different(Number(process.argv[3])), WIDTH)
  const { found, time } = timed(() => solvedWithin(program, SECONDS))
  process.send?.(found === null ? null : { ...found, time })
}
