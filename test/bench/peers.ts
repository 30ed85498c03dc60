/**
 * Pressing and subdividing beside general solvers of the same questions, on the same input.
 *
 * Out     for each size the middle time of ours and of the peer, how many times ours the peer takes, and whether the answers are the same.
 * How     every run has a process of its own, which first solves a small size again and again; a peer that has no answer after a minute is
 *         ended and not asked for larger sizes. Then only the growth of our own time is known.
 */
import { inTime } from './child.ts'
import { CONTESTS, type Contest, type Run, type Side } from './contests.ts'

const MINUTE = 60_000

export async function besidePeers(): Promise<void> {
  for (const contest of CONTESTS) {
    console.log(`\n${contest.title}\n${'size'.padStart(9)} ${'ours ms'.padStart(9)} ${'peer ms'.padStart(9)} ${'peer / ours'.padStart(12)}   answers`)
    let finishes = true
    for (const size of contest.sizes) {
      const ours = await runOf(contest, 'ours', size)
      const peer: Run | null = finishes ? await runOf(contest, 'peer', size) : null
      finishes = peer !== null
      console.log(lineOf(ours, peer))
    }
  }
}

function lineOf(ours: Run | null, peer: Run | null): string {
  const time = (run: Run | null): string => (run === null ? '–' : run.time.toFixed(1)).padStart(9)
  const times = `${String(ours?.size ?? peer?.size ?? '–').padStart(9)} ${time(ours)} ${time(peer)}`
  if (ours === null || peer === null) return `${times} ${'–'.padStart(12)}   ${ours === null ? 'ours' : 'the peer'} did not finish`
  const answers = ours.answer === peer.answer ? `same: ${ours.answer}` : `ours ${ours.answer}, the peer's ${peer.answer}`
  return `${times} ${(peer.time / ours.time).toFixed(1).padStart(12)}   ${answers}`
}

/** Null where there was no answer in time. */
const runOf = ({ name }: Contest, side: Side, size: number): Promise<Run | null> =>
  inTime(new URL('./contestant.ts', import.meta.url), [name, side, String(size)], MINUTE)
