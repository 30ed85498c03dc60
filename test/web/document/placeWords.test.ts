/** Places in the block, counted as a maker counts squares: from 1, from the top left. */
import { afterEach, describe, expect, it } from 'vitest'
import { germanMessages } from '../../../geometry/words/german.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { german } from '../../../web/words/german.ts'
import { placeWords, unitInWords } from '../../../web/document/placeWords.ts'
import { setWords } from '../../../web/words/words.ts'

const GRID = { columns: 24, rows: 24 }
afterEach(() => setWords('en', {}, null))

describe('a place in the block', () => {
  it('is a column and a row', () => {
    expect(placeWords([1.5, 0.5], GRID)).toBe('2nd column, 1st row')
    expect(placeWords([2.2, 10.5], GRID)).toBe('3rd column, 11th row')
    expect(placeWords([20.5, 21.9], GRID)).toBe('21st column, 22nd row')
  })

  it('lies between two of them, or on an edge', () => {
    expect(placeWords([2, 1.5], GRID)).toBe('between columns 2 and 3, 2nd row')
    expect(placeWords([0, 24], GRID)).toBe('left edge, bottom edge')
  })

  it('is said in German', () => {
    setWords('de', german, germanMessages)
    expect(placeWords([1.5, 0.5], GRID)).toBe('2. Spalte, 1. Reihe')
  })
})

describe('a unit', () => {
  it('is named by its kind and place, never by its id', () => {
    const goose = eveningStar.units.find(({ kind }) => kind === 'goose')?.id ?? ''
    expect(unitInWords(eveningStar, goose)).toBe('the top goose')
  })
})
