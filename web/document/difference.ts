/**
 * The changes that turn one value into another, as few and as small as can be found quickly, and how they are written as text.
 *
 * In      two JSON values that may share parts; shared parts are skipped.
 * Out     changes in the order they are made; the same as one short text, in which a move of many units costs a few letters for each.
 * Exact   lists of items with ids are matched by id, so that removing one unit out of thousands is one change and not thousands.
 */
type Path = readonly (string | number)[]

export interface Change {
  readonly op: 'add' | 'replace' | 'remove'
  /** The place, from the outside in. A number is a place in a list; there `add` moves the rest up and `remove` moves it down. */
  readonly path: Path
  readonly value?: unknown
}

type Fields = Readonly<Record<string, unknown>>

export function changesBetween(before: unknown, after: unknown): Change[] {
  const found: Change[] = []
  collect(before, after, [], found)
  return found
}

function collect(before: unknown, after: unknown, path: Path, found: Change[]): void {
  if (Object.is(before, after)) return
  if (Array.isArray(before) && Array.isArray(after)) collectList(before, after, path, found)
  else if (isFields(before) && isFields(after)) collectFields(before, after, path, found)
  else found.push({ op: 'replace', path, value: after })
}

const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null && !Array.isArray(value)
const has = (fields: Fields, name: string): boolean => Object.hasOwn(fields, name) && fields[name] !== undefined

function collectFields(before: Fields, after: Fields, path: Path, found: Change[]): void {
  for (const name of Object.keys(before)) {
    if (!has(before, name)) continue
    if (!has(after, name)) found.push({ op: 'remove', path: [...path, name] })
    else collect(before[name], after[name], [...path, name], found)
  }
  for (const name of Object.keys(after))
    if (has(after, name) && !has(before, name)) found.push({ op: 'add', path: [...path, name], value: after[name] })
}

function collectList(before: readonly unknown[], after: readonly unknown[], path: Path, found: Change[]): void {
  if (isShort(before) && isShort(after)) {
    if (JSON.stringify(before) !== JSON.stringify(after)) found.push({ op: 'replace', path, value: after })
    return
  }
  const [from, beforeEnd, afterEnd] = middle(before, after)
  const kept = keptPlaces(before.slice(from, beforeEnd), after.slice(from, afterEnd))
  if (kept === null) collectInPlace(before, after, path, found)
  else collectById(before.slice(from, beforeEnd), after.slice(from, afterEnd), kept, from, path, found)
}

/** A short list, such as a point, is changed as a whole. */
const isShort = (list: readonly unknown[]): boolean => list.length <= 4 && list.every((item) => typeof item !== 'object')

/** Where two lists start and stop being different. */
function middle(before: readonly unknown[], after: readonly unknown[]): [from: number, beforeEnd: number, afterEnd: number] {
  const least = Math.min(before.length, after.length)
  let from = 0
  while (from < least && before[from] === after[from]) from++
  let tail = 0
  while (tail < least - from && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++
  return [from, before.length - tail, after.length - tail]
}

const idOf = (item: unknown): string | null => (isFields(item) && typeof item.id === 'string' ? item.id : null)

/** For each item of the later list its place in the earlier one, or -1; null where ids are missing, twice there, or in another order. */
function keptPlaces(before: readonly unknown[], after: readonly unknown[]): number[] | null {
  const places = new Map<string | null, number>()
  before.forEach((item, place) => {
    places.set(idOf(item), place)
  })
  const ids = after.map(idOf)
  if (places.has(null) || places.size < before.length || ids.includes(null) || new Set(ids).size < ids.length) return null
  const kept = ids.map((id) => places.get(id) ?? -1)
  const order = kept.filter((place) => place >= 0)
  return order.every((place, index) => index === 0 || place > (order[index - 1] as number)) ? kept : null
}

/** Removes from the end and adds from the start, so that each place is right when its change is made. */
function collectById(
  before: readonly unknown[],
  after: readonly unknown[],
  kept: readonly number[],
  from: number,
  path: Path,
  found: Change[],
): void {
  const stays = new Set(kept)
  for (let place = before.length - 1; place >= 0; place--) if (!stays.has(place)) found.push({ op: 'remove', path: [...path, from + place] })
  kept.forEach((old, place) => {
    if (old < 0) found.push({ op: 'add', path: [...path, from + place], value: after[place] })
  })
  kept.forEach((old, place) => {
    if (old >= 0) collect(before[old], after[place], [...path, from + place], found)
  })
}

function collectInPlace(before: readonly unknown[], after: readonly unknown[], path: Path, found: Change[]): void {
  for (let place = before.length - 1; place >= after.length; place--) found.push({ op: 'remove', path: [...path, place] })
  after.forEach((item, place) => {
    if (place < before.length) collect(before[place], item, [...path, place], found)
    else found.push({ op: 'add', path: [...path, place], value: item })
  })
}

/** The value with the changes made; what they do not touch is shared with it. */
export function applyChanges<T>(value: T, changes: readonly Change[]): T {
  const root = { value: value as unknown }
  const own = new Set<unknown>([root])
  for (const change of changes) make(root, change, own)
  return root.value as T
}

type Holder = Record<string | number, unknown>

function make(root: { value: unknown }, { op, path, value }: Change, own: Set<unknown>): void {
  let holder = root as unknown as Holder
  let name: string | number = 'value'
  for (const next of path) {
    holder = owned(holder, name, own)
    name = next
  }
  if (Array.isArray(holder) && op !== 'replace') holder.splice(name as number, op === 'remove' ? 1 : 0, ...(op === 'add' ? [value] : []))
  else if (op === 'remove') delete holder[name]
  else put(holder, name, value)
}

/** The part under a name, copied once so that it can be changed. */
function owned(holder: Holder, name: string | number, own: Set<unknown>): Holder {
  const part = holder[name]
  if (own.has(part)) return part as Holder
  const copy = (Array.isArray(part) ? [...part] : { ...(part as Holder) }) as Holder
  own.add(copy)
  put(holder, name, copy)
  return copy
}

/** A list's length can be set too, as in older histories; a field called `__proto__` is a field like any other. */
function put(holder: Holder, name: string | number, value: unknown): void {
  if (name === '__proto__') Object.defineProperty(holder, name, { value, writable: true, enumerable: true, configurable: true })
  else holder[name] = value
}

/** Changes that differ only in one place of a list: the operation, the path with a gap, the places (or the first, null, the last), the values. */
type Run = [op: Change['op'], path: (string | number | null)[], places: (number | null)[], values?: unknown[]]

export function packChanges(changes: readonly Change[]): string {
  const runs: Run[] = []
  let lastShape = ''
  for (const change of changes) {
    const gap = change.path.findIndex((name) => typeof name === 'number')
    const path = change.path.map((name, index) => (index === gap ? null : name))
    const shape = JSON.stringify([change.op, path])
    if (shape !== lastShape || gap < 0) runs.push(change.op === 'remove' ? [change.op, path, []] : [change.op, path, [], []])
    const run = runs.at(-1) as Run
    if (gap >= 0) run[2].push(change.path[gap] as number)
    run[3]?.push(change.value)
    lastShape = shape
  }
  return JSON.stringify(runs.map(([op, path, places, ...values]) => [op, path, shortened(places as number[]), ...values]))
}

const shortened = (places: readonly number[]): (number | null)[] =>
  places.length > 3 && places.every((place, index) => place === (places[0] as number) + index)
    ? [places[0] as number, null, places.at(-1) as number]
    : [...places]

function lengthened(places: readonly (number | null)[]): number[] {
  const [first, gap, last] = places
  if (gap !== null) return places as number[]
  return Array.from({ length: (last as number) - (first as number) + 1 }, (_, index) => (first as number) + index)
}

export function unpackChanges(text: string): Change[] {
  return (JSON.parse(text) as Run[]).flatMap(([op, path, short, values]) => {
    const gap = path.indexOf(null)
    const places = gap < 0 ? [0] : lengthened(short)
    return places.map((place, index) => ({
      op,
      path: path.map((name) => name ?? place),
      ...(values === undefined ? {} : { value: values[index] }),
    }))
  })
}
