/**
 * The quilting route beside an integer-program solver, highs 1.15.3, that is asked for the least length stitched twice in the same web of seams.
 *
 * Out     for each size the middle time of ours (the whole route, walked) and of the peer (the length alone; writing its program not counted), and
 *         whether the lengths are the same; the exponent of our growth from one size to the next.
 * How     every run has a process of its own, which first works on a small block again and again; a peer that has no answer after a minute is ended
 *         and not asked for larger sizes.
 * Times depend on the machine and so are printed, never asserted.
 */
import { inTime } from './child.ts'
import { fileURLToPath } from 'node:url'
import { lay } from '../../geometry/block/lay.ts'
import type { Dot } from '../../geometry/plane/points.ts'
import { subdivide } from '../../geometry/plane/subdivide.ts'
import { ditch } from '../../geometry/quilting/ditchRoute.ts'
import type { Segment } from '../../geometry/quilting/seamGraph.ts'
import { programOf, solvedLength } from '../quilting/seams.ts'
import { manyUnits } from './blocks.ts'

type Side = 'ours' | 'peer'

interface Run {
  readonly seams: number
  /** In ms. */
  readonly time: number
  /** Stitched twice, in steps. */
  readonly retraced: number
  readonly proved: boolean
}

/** Units along a side: about 100, 450, 1,800, 10,000 and 40,000 seams. */
const SIZES = [5, 10, 20, 46, 93]
const MINUTE = 60_000
const RUNS = 5
const ENOUGH = 5_000
const WARM = 1_000

export async function routesBesidePeer(): Promise<void> {
  console.log('\nThe route along the seams of a block; the peer is an integer-program solver that finds only what is stitched twice')
  console.log('    seams   ours ms   peer ms  peer / ours   exponent   stitched twice')
  let finishes = true
  let last: Run | null = null
  for (const size of SIZES) {
    const ours = await runOf('ours', size)
    const peer: Run | null = finishes ? await runOf('peer', size) : null
    finishes = peer !== null
    if (ours === null) console.log(`${String(size).padStart(9)} ours did not finish`)
    else console.log(lineOf(ours, peer, last))
    last = ours
  }
}

function lineOf(ours: Run, peer: Run | null, last: Run | null): string {
  const shown = (time: number | undefined): string => (time === undefined ? '–' : time.toFixed(1)).padStart(9)
  const exponent = last === null ? '' : (Math.log(ours.time / last.time) / Math.log(ours.seams / last.seams)).toFixed(2)
  const faster = peer === null ? '–' : (peer.time / ours.time).toFixed(1)
  const length = `${ours.retraced.toFixed(3)}${ours.proved ? ', proved' : ''}`
  const answers =
    peer === null
      ? `${length}; the peer did not finish`
      : Math.abs(peer.retraced - ours.retraced) < 1e-6 * (1 + ours.retraced)
        ? `same: ${length}`
        : `ours ${length}, the peer's ${peer.retraced.toFixed(3)}`
  return `${String(ours.seams).padStart(9)} ${shown(ours.time)} ${shown(peer?.time)} ${faster.padStart(12)} ${exponent.padStart(10)}   ${answers}`
}

/** Null where there was no answer in time. */
const runOf = (side: Side, size: number): Promise<Run | null> => inTime(new URL(import.meta.url), [side, String(size)], MINUTE)

function seamsOf(size: number): Segment[] {
  const { patches, width, height } = lay(manyUnits(size))
  const outline: Dot[] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ]
  const { dots, edges } = subdivide(
    patches.map(({ corners }) => corners),
    outline,
  )
  return edges.flatMap(({ a, b, plus, minus }) => (plus >= 0 && minus >= 0 ? [[dots[a] as Dot, dots[b] as Dot] as const] : []))
}

/** The seams of these blocks all hang together. */
function contestant(side: Side, seams: readonly Segment[]): () => { retraced: number; proved: boolean } {
  if (side === 'ours') return () => ditch(seams)
  const program = programOf([seams])
  return () => ({ retraced: solvedLength(program), proved: true })
}

function contest(side: Side, size: number): Run {
  const small = contestant(side, seamsOf(4))
  for (const begun = performance.now(); performance.now() - begun < WARM; ) small()
  const seams = seamsOf(size)
  const run = contestant(side, seams)
  const times: number[] = []
  let answer = { retraced: Number.NaN, proved: false }
  for (const begun = performance.now(); times.length < RUNS && performance.now() - begun < ENOUGH; ) {
    const start = performance.now()
    answer = run()
    times.push(performance.now() - start)
  }
  return {
    seams: seams.length,
    time: times.sort((a, b) => a - b)[Math.floor(times.length / 2)] as number,
    retraced: answer.retraced,
    proved: answer.proved,
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url) && process.send !== undefined) {
  const [side, size] = process.argv.slice(2) as [Side, string]
  process.send(contest(side, Number(size)), () => process.exit())
}
