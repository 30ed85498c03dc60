/**
 * Which versions to delete as time goes by.
 *
 * In      when each version was made, whether the maker named it, and the time now.
 * Out     the ids of those to delete: all of the last hour stay, then the last of each hour for a day, then the last of each day.
 */
interface Dated {
  readonly id: string
  readonly made: number
  readonly name: string | null
}

const HOUR = 3_600_000
const DAY = 24 * HOUR

export function thinVersions(versions: readonly Dated[], now: number): string[] {
  const newest = [...versions].filter(({ name }) => name === null).sort((a, b) => b.made - a.made)
  const seen = new Set<string>()
  const gone: string[] = []
  for (const { id, made } of newest) {
    const span = spanOf(made, now)
    if (span !== null && seen.has(span)) gone.push(id)
    else if (span !== null) seen.add(span)
  }
  return gone
}

/** The most versions that are deleted for each one added. */
const MOST_AT_ONCE = 2

/** Only the oldest few of those, so that a clock that is wrong once costs a few versions and not a day's work. */
export const thinALittle = (versions: readonly Dated[], now: number): string[] => thinVersions(versions, now).slice(-MOST_AT_ONCE)

/** The hour or day of the clock that a version stands for; null while all are kept. Spans do not move as time goes by, so a version that was spared stays spared within its span. */
function spanOf(made: number, now: number): string | null {
  if (now - made <= HOUR) return null
  return now - made <= DAY ? `hour ${Math.floor(made / HOUR)}` : `day ${Math.floor(made / DAY)}`
}
