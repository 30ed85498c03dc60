/** Union-find: merges items into sets; the leader of each is found by following the chain, which is halved on the way. */
interface UnionFind {
  readonly find: (thing: number) => number
  /** The leader of `a` leads both. */
  readonly join: (a: number, b: number) => void
}

export function unionFind(count: number): UnionFind {
  const leader = Int32Array.from({ length: count }, (_, thing) => thing)
  const find = (thing: number): number => {
    let top = thing
    while (leader[top] !== top) {
      leader[top] = leader[leader[top] as number] as number
      top = leader[top] as number
    }
    return top
  }
  return {
    find,
    join: (a, b) => {
      leader[find(b)] = find(a)
    },
  }
}
