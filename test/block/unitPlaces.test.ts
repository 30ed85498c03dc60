/** Units pointed at by kind and place, in English and German; never by an id. */
import { describe, expect, it } from 'vitest'
import { unitPlaces } from '../../geometry/block/unitPlaces.ts'
import { readBlock } from '../../geometry/index.ts'
import type { Block, Unit } from '../../geometry/values/block.ts'
import { unitInEnglish, unitLabelInEnglish } from '../../geometry/words/unitEnglish.ts'
import { unitInGerman, unitLabelInGerman } from '../../geometry/words/unitGerman.ts'
import { blockOf, sequence, square, star } from '../help.ts'
import { tiling } from '../layouts.ts'

const plain = ['b', 'b'] as const
const evening = star([plain, plain, plain, plain])

const inEnglishOf = (block: Block): string[] => block.units.map(({ id }) => unitInEnglish(unitPlaces(block)(id)))

describe('a unit is named', () => {
  it('by its side of the block, where each of its kind has a side of its own', () => {
    expect(inEnglishOf(evening)).toEqual([
      'the top goose',
      'the right-hand goose',
      'the bottom goose',
      'the left-hand goose',
      'the top left square',
      'the top right square',
      'the bottom right square',
      'the bottom left square',
      'the centre square',
    ])
    expect(unitLabelInEnglish(unitPlaces(evening)('g0'))).toBe('Top goose')
  })

  it('by its row, where several of its kind share a side', () => {
    const patch = blockOf(4, 2, [0, 1, 2, 3, 4, 5, 6, 7].map((n) => square(`s${n}`, [n % 4, Math.floor(n / 4)])).reverse())
    const place = unitPlaces(patch)('s4')
    expect(unitInEnglish(place)).toBe('the first square in row 2')
    expect(unitLabelInEnglish(place)).toBe('Row 2, first square')
    expect(unitInGerman(place)).toBe('das erste Quadrat in Reihe 2')
    expect(unitInGerman(place, 'dative')).toBe('dem ersten Quadrat in Reihe 2')
    expect(unitLabelInGerman(place)).toBe('Reihe 2, erstes Quadrat')
  })

  it('by its kind alone, where the block has no other', () => {
    const block = blockOf(3, 1, [square('one', [0, 0]), square('long', [1, 0], [2, 1])])
    expect(inEnglishOf(block)).toEqual(['the square', 'the rectangle'])
  })

  it('by thirds of a cell, exactly', () => {
    const third = (id: string, x: number | string, y: number | string): Unit => ({ ...square(id, [0, 0]), at: [x, y], size: ['1/3', '1/3'] }) as Unit
    const block = blockOf(1, 1, [third('a', 0, '1/3'), third('b', '1/3', '1/3'), third('c', '2/3', '1/3')])
    expect(inEnglishOf(block)).toEqual(['the left-hand square', 'the centre square', 'the right-hand square'])
  })

  it('by the name that its maker gave it', () => {
    const named = { ...evening, units: evening.units.map((unit) => (unit.id === 'g0' ? { ...unit, name: ' North wind ' } : unit)) }
    const place = unitPlaces(named)('g0')
    expect([unitInEnglish(place), unitLabelInEnglish(place), unitInGerman(place)]).toEqual(['North wind', 'North wind', 'North wind'])
    expect(unitInEnglish(unitPlaces(named)('g1'))).toBe('the right-hand goose')
    expect(readBlock(JSON.stringify(named)).ok).toBe(true)
    const wrong = readBlock(JSON.stringify({ ...evening, units: [{ ...evening.units[0], name: 3 }] }))
    expect(wrong.ok ? '' : wrong.place).toBe('units[0].name')
  })

  it('unlike any other unit, by no id', () => {
    for (let seed = 0; seed < 40; seed++) {
      const block = blockOf(6, 5, tiling(sequence(seed), 6, 5))
      const names = inEnglishOf(block)
      expect(new Set(names).size, `seed ${seed}`).toBe(block.units.length)
      expect(names.join()).not.toMatch(/\bu\d/)
    }
  })
})
