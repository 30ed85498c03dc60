/** Numbers by their keys, the least key first. */
export class Heap {
  private readonly keys: number[] = []
  private readonly items: number[] = []

  get size(): number {
    return this.keys.length
  }

  get least(): number {
    return this.keys[0] as number
  }

  clear(): void {
    this.keys.length = 0
    this.items.length = 0
  }

  put(key: number, item: number): void {
    let at = this.keys.length
    this.keys.push(key)
    this.items.push(item)
    while (at > 0) {
      const above = (at - 1) >> 1
      if ((this.keys[above] as number) <= key) break
      this.keys[at] = this.keys[above] as number
      this.items[at] = this.items[above] as number
      at = above
    }
    this.keys[at] = key
    this.items[at] = item
  }

  take(): number {
    const first = this.items[0] as number
    const key = this.keys.pop() as number
    const item = this.items.pop() as number
    const size = this.keys.length
    if (size === 0) return first
    let at = 0
    for (;;) {
      let below = 2 * at + 1
      if (below >= size) break
      if (below + 1 < size && (this.keys[below + 1] as number) < (this.keys[below] as number)) below++
      if ((this.keys[below] as number) >= key) break
      this.keys[at] = this.keys[below] as number
      this.items[at] = this.items[below] as number
      at = below
    }
    this.keys[at] = key
    this.items[at] = item
    return first
  }
}
