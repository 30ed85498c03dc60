/** Numbers in a row from here on are written with a dash. */
const RUN = 3

/** Rising numbers as words: `1`, `3`, `5–8`. */
export function runsOf(numbers: readonly number[]): string[] {
  const runs: number[][] = []
  for (const one of numbers) {
    const last = runs.at(-1)
    if (last !== undefined && last.at(-1) === one - 1) last.push(one)
    else runs.push([one])
  }
  return runs.flatMap((run) => (run.length >= RUN ? [`${run[0]}–${run.at(-1)}`] : run.map(String)))
}
