/**
 * Results made for a list of things, reused for the very same things when the list comes again with a few others in between.
 *
 * In      `begin` once for each pass; then for each thing in turn: what was made of it in the last pass (`reuse`), and what is made now (`keep`).
 * Out     `reuse`: the last result, or undefined. `keep`: the result it was given.
 */

/** How far ahead a thing is looked for: an edit puts few others in between. */
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
