/**
 * The least number of four-at-a-time batches for 1,000 geese in 8 fabrics beside a general solver of integer programs.
 *
 * Out     for each way to colour them: our time (the middle of some runs), number and whether it is proved; the same of the peer, highs 1.15.3, which
 *         is given a minute; how many times ours the peer takes, and whether its answer is better.
 * How     both are asked in this process, one after the other, once they have answered small questions of the kind for a while. The peer reads its program, which is written before; ours is told the geese.
 */
import { leastBatches } from '../../geometry/cutting/batches/geeseBatches.ts'
import { COLOURINGS, type Colouring, demandOfColouring, geeseOf, programOf, solvedCover } from '../cutting/covers.ts'
import { sequence } from '../help.ts'

const FABRICS = 8
const GEESE = 1000
const MINUTE = 60
const RUNS = 9
/** In ms, for each side. */
const WARM = 1000

interface Told {
  readonly time: number
  readonly number: number
  readonly proved: boolean
}

export async function batchesBesidePeer(): Promise<void> {
  console.log(`\nBatches for ${GEESE} geese in ${FABRICS} fabrics; the peer is an integer-program solver`)
  console.log(`${'colouring'.padEnd(32)} ${'ours ms'.padStart(9)} ${'peer ms'.padStart(9)} ${'peer / ours'.padStart(12)}   batches`)
  // The engine compiles what it has seen often.
  repeated((seed) => leastBatches('goose', geeseOf(FABRICS, smallDemand(seed))))
  repeated((seed) => solvedCover(programOf(4, demandOfColouring(anyWings, sequence(seed), 4, 20))))
  for (const [name, colouring] of Object.entries(COLOURINGS)) {
    const demand = demandOfColouring(colouring, sequence(1), FABRICS, GEESE)
    const geese = geeseOf(FABRICS, demand)
    const program = programOf(FABRICS, demand)
    const ours = timed(RUNS, () => {
      const { batches, proved } = leastBatches('goose', geese)
      return { number: batches.length, proved }
    })
    const peer = timed(1, () => solvedCover(program, MINUTE))
    const times = `${ours.time.toFixed(1).padStart(9)} ${peer.time.toFixed(1).padStart(9)} ${(peer.time / ours.time).toFixed(1).padStart(12)}`
    console.log(`${name.padEnd(32)} ${times}   ours ${said(ours)}, the peer's ${said(peer)}`)
  }
}

const anyWings = COLOURINGS['any wings'] as Colouring
const smallDemand = (seed: number): Int32Array => demandOfColouring(anyWings, sequence(seed), FABRICS, 200)

function repeated(run: (seed: number) => void): void {
  for (let [seed, begun] = [1, performance.now()]; performance.now() - begun < WARM; seed++) run(seed)
}

const said = ({ number, proved }: Told): string => `${number}${proved ? ' (proved)' : ''}`

/** The middle time of several runs. */
function timed(runs: number, run: () => Omit<Told, 'time'>): Told {
  const all = Array.from({ length: runs }, (): Told => {
    const start = performance.now()
    const answer = run()
    return { time: performance.now() - start, ...answer }
  })
  return all.sort((one, other) => one.time - other.time)[Math.floor(runs / 2)] as Told
}
