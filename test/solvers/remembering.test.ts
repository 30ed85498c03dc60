import { expect, it } from 'vitest'
import { remembering } from '../../geometry/solvers/remembering.ts'

it('asks once for each key, also where the answer is nothing, and forgets the one longest not asked for', () => {
  const asked: number[] = []
  const half = remembering(
    (number: number): number | null => {
      asked.push(number)
      return number % 2 === 0 ? number / 2 : null
    },
    String,
    2,
  )
  expect([half(4), half(3), half(4), half(3)]).toEqual([2, null, 2, null])
  expect(asked).toEqual([4, 3])
  half(6)
  expect(asked).toEqual([4, 3, 6])
  half(3)
  expect(asked).toEqual([4, 3, 6])
  half(4)
  expect(asked).toEqual([4, 3, 6, 4])
})
