/**
 * Results for a list of objects, reused for the same objects when the list comes again with a few others in between.
 *
 * In      `begin` once for each pass; then for each object in turn: its result from the last pass (`reuse`), and its new result (`keep`).
 * Out     `reuse`: the last result, or undefined. `keep`: the result it was given.
 */

/** How far ahead an object is looked for: an edit puts few others in between. */
const LOOK_AHEAD = 40

interface Pass<Thing, Result> {
  readonly things: Thing[]
  readonly results: Result[]
}

export class ReuseCache<Thing, Result> {
  private last: Pass<Thing, Result> = { things: [], results: [] }
  private now: Pass<Thing, Result> = { things: [], results: [] }
  private place = 0

  begin(): void {
    this.last = this.now
    this.now = { things: [], results: [] }
    this.place = 0
  }

  reuse(thing: Thing): Result | undefined {
    const { things, results } = this.last
    for (let place = this.place; place < things.length && place < this.place + LOOK_AHEAD; place++) {
      if (things[place] !== thing) continue
      this.place = place + 1
      return results[place]
    }
    return undefined
  }

  keep(thing: Thing, result: Result): Result {
    this.now.things.push(thing)
    this.now.results.push(result)
    return result
  }
}
