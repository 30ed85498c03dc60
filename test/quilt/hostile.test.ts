/** Quilt files damaged at random: each is read, or refused with the place named; what is read gets a report. */
import { describe, expect, it } from 'vitest'
import { inEnglish, quiltReport, readQuilt } from '../../geometry/index.ts'
import { sequence } from '../help.ts'
import { randomQuilt } from './quilts.ts'

const ODD: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  1e308,
  0.1,
  1.5,
  Number.MAX_SAFE_INTEGER,
  '',
  '1/0',
  '-1/2',
  '1e9',
  '0',
  'whole',
  '__proto__',
  'constructor',
  [],
  {},
  [0, 0],
  [-1, 3],
  [9999, 9999],
  ['a'],
  'b0',
  'p0',
  'pale',
]

type Branch = Record<string, unknown> | unknown[]

/** Every place in a value that can be changed. */
function branchesOf(value: unknown, found: Branch[] = []): Branch[] {
  if (typeof value !== 'object' || value === null) return found
  found.push(value as Branch)
  for (const inner of Object.values(value)) branchesOf(inner, found)
  return found
}

function damaged(text: string, random: () => number): string {
  const value = JSON.parse(text) as unknown
  const pick = <One>(all: readonly One[]): One => all[Math.floor(random() * all.length)] as One
  for (let change = 0; change <= Math.floor(random() * 3); change++) {
    const branch = pick(branchesOf(value)) as Record<string, unknown>
    const keys = Object.keys(branch)
    const key = keys.length === 0 ? 'more' : pick(keys)
    const what = random()
    if (what < 0.2) delete branch[key]
    else branch[key] = what < 0.8 ? pick(ODD) : structuredClone(pick(branchesOf(value)))
  }
  const written = JSON.stringify(value)
  return random() < 0.03 ? written.slice(0, Math.floor(random() * written.length)) : written
}

const WAYS = [
  {},
  { way: { join: 'strips', width: '3/4', fabric: 'deep', cover: 'flat' } },
  { way: { join: 'fronts' } },
  { way: { join: 'backing-over' } },
  { way: { join: 'butted', fabric: 'deep' } },
  { way: { sash: { width: 1, fabric: 'deep', corner: 'pale', round: true } }, borders: [{ finishedWidth: 2, fabric: 'deep' }] },
  { free: { turn: 'quarter', press: true }, parts: [{ title: 'One', places: ['p0'] }] },
]

describe('hostile quilt files', () => {
  it.each(WAYS.map((more, seed) => ({ more, seed })))('are read or refused by name, never thrown at ($seed)', ({ more, seed }) => {
    const random = sequence(seed + 40)
    const text = JSON.stringify({ ...randomQuilt(3, 2, seed, { spans: true }), ...more })
    let refused = 0
    for (let file = 0; file < 60; file++) {
      const read = readQuilt(damaged(text, random))
      if (read.ok) expect(quiltReport(read.value).format).toBe('nestwright.quilt-report')
      else {
        refused++
        expect(read.place).not.toBe('')
        expect(inEnglish(read.message)).not.toMatch(/undefined|\n/)
      }
    }
    expect(refused).toBeGreaterThan(10)
  })
})
