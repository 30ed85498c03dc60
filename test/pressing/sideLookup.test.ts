/** On which side of a seam a patch lies, against the plain way: look through the patches of each piece. */
import { expect, it } from 'vitest'
import { sideLookupOf } from '../../geometry/pressing/sideLookup.ts'
import { sequence } from '../help.ts'

it('tells the near side, the far side, and neither, for every patch, for the outside, and in every order of joining', () => {
  for (let seed = 1; seed <= 20; seed++) {
    const next = sequence(seed)
    const patches = 2 + Math.floor(next() * 7)
    const open = Array.from({ length: patches }, (_, patch) => patch)
    const held = open.map((patch) => [patch])
    const [near, far] = [new Int32Array(patches - 1), new Int32Array(patches - 1)]
    // The last join is left out of every other block: its two pieces then lie apart.
    const joins = patches - 1 - (seed % 2)
    for (let seam = 0; seam < joins; seam++) {
      const [one] = open.splice(Math.floor(next() * open.length), 1) as [number]
      const [other] = open.splice(Math.floor(next() * open.length), 1) as [number]
      near[seam] = one
      far[seam] = other
      held.push([...(held[one] as number[]), ...(held[other] as number[])])
      open.push(patches + seam)
    }
    const sideOf = sideLookupOf(patches, near.subarray(0, joins), far.subarray(0, joins))
    for (let seam = 0; seam < joins; seam++)
      for (let patch = -1; patch < patches; patch++) {
        const side = held[near[seam] as number]?.includes(patch) ? 0 : held[far[seam] as number]?.includes(patch) ? 1 : -1
        expect(sideOf(seam, patch), `seed ${seed}, seam ${seam}, patch ${patch}`).toBe(side)
      }
  }
})
