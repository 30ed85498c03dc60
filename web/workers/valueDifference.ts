/**
 * The difference between two values, so that little has to be posted between the page and a worker that both hold the earlier one.
 *
 * In      two plain objects, of which the later one shares with the earlier one whatever did not change.
 * Out     the fields that differ, and of lists only the parts that differ; applied to the earlier value, the later one again, which shares just as much.
 */

/** A list is described by stretches of the earlier list, and the new items between them. */
type Stretch = { readonly from: number; readonly count: number } | { readonly items: readonly unknown[] }

export interface ValueDifference {
  readonly fields: Readonly<Record<string, { readonly value: unknown } | { readonly list: readonly Stretch[] }>>
  readonly gone: readonly string[]
}

export function valueDifference(before: object, now: object): ValueDifference {
  const known = new Map<string, unknown>(Object.entries(before))
  const fields: [string, ValueDifference['fields'][string]][] = []
  for (const [name, value] of Object.entries(now)) {
    const last = known.get(name)
    if (known.has(name) && last === value) continue
    fields.push([name, Array.isArray(last) && Array.isArray(value) ? { list: stretchesOf(last, value) } : { value }])
  }
  return { fields: Object.fromEntries(fields), gone: [...known.keys()].filter((name) => !Object.hasOwn(now, name)) }
}

export function applyDifference<Value extends object>(before: Value, { fields, gone }: ValueDifference): Value {
  const known = Object.entries(before).filter(([name]) => !gone.includes(name))
  const list = (name: string): readonly unknown[] => (before as Record<string, readonly unknown[]>)[name] ?? []
  const put = Object.entries(fields).map(([name, field]) => [name, 'list' in field ? joined(list(name), field.list) : field.value])
  return Object.fromEntries([...known, ...put]) as Value
}

/** How far ahead an item is searched for in the earlier list: an edit inserts few others. */
const FAR = 40

function stretchesOf(before: readonly unknown[], now: readonly unknown[]): Stretch[] {
  const stretches: Stretch[] = []
  let place = 0
  let run: { from: number; count: number } | null = null
  let fresh: unknown[] | null = null
  for (const thing of now) {
    const found = placeOf(before, thing, place)
    if (found < 0) {
      if (fresh === null) {
        fresh = []
        stretches.push({ items: fresh })
      }
      fresh.push(thing)
      run = null
      continue
    }
    if (run === null || run.from + run.count !== found) {
      run = { from: found, count: 0 }
      stretches.push(run)
    }
    run.count++
    fresh = null
    place = found + 1
  }
  return stretches
}

function placeOf(before: readonly unknown[], thing: unknown, from: number): number {
  for (let place = from; place < before.length && place < from + FAR; place++) if (before[place] === thing) return place
  return -1
}

function joined(before: readonly unknown[], stretches: readonly Stretch[]): unknown[] {
  const list: unknown[] = []
  for (const stretch of stretches) {
    if ('items' in stretch) for (const thing of stretch.items) list.push(thing)
    else for (let place = stretch.from; place < stretch.from + stretch.count; place++) list.push(before[place])
  }
  return list
}
