/**
 * What was said of things in order, to be said again of the very same things in the same order, with a few others in between.
 *
 * In      `begin` once for each telling; then of each thing in turn: was something said of it last time (`of`), and what is said now (`tell`).
 */

/** How far on a thing is looked for: an edit puts few others in between. */
const FAR = 40

export class Again<Thing, Told> {
  private last: { readonly things: Thing[]; readonly told: Told[] } = { things: [], told: [] }
  private now: { readonly things: Thing[]; readonly told: Told[] } = { things: [], told: [] }
  private place = 0

  begin(): void {
    this.last = this.now
    this.now = { things: [], told: [] }
    this.place = 0
  }

  of(thing: Thing): Told | undefined {
    const { things, told } = this.last
    for (let place = this.place; place < things.length && place < this.place + FAR; place++) {
      if (things[place] !== thing) continue
      this.place = place + 1
      return told[place]
    }
    return undefined
  }

  tell(thing: Thing, told: Told): Told {
    this.now.things.push(thing)
    this.now.told.push(told)
    return told
  }
}
