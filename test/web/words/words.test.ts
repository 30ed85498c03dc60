/** The labels of the interface in German: nothing in English only, nothing left over. */
import { describe, expect, it } from 'vitest'
import { germanMessages } from '../../../geometry/words/german.ts'
import { german } from '../../../web/words/german.ts'
import { setWords, t, tn } from '../../../web/words/words.ts'
import { wordsUsed } from './wordsUsed.ts'

const PLACE = /\{\w+\}/g
const placesOf = (text: string): string[] => [...new Set(text.match(PLACE) ?? [])].sort()
const inGerman = <T>(said: () => T): T => {
  setWords('de', german, germanMessages)
  try {
    return said()
  } finally {
    setWords('en', {}, null)
  }
}

describe('the German catalogue', () => {
  it('says every sentence of the screen', () => {
    expect([...wordsUsed()].filter((text) => !Object.hasOwn(german, text))).toEqual([])
  })

  it('has nothing left over', () => {
    const used = wordsUsed()
    expect(Object.keys(german).filter((text) => !used.has(text))).toEqual([])
  })

  it('leaves no place out and makes none up', () => {
    for (const [english, words] of Object.entries(german)) {
      const forms = typeof words === 'string' ? [words] : Object.values(words)
      // A form for one may leave the count out: "eine Einheit".
      const besidesCount = (text: string): string[] => placesOf(text).filter((place) => place !== '{n}')
      for (const form of forms) expect(besidesCount(form), english).toEqual(besidesCount(english))
    }
  })

  it('counts in its own forms', () => {
    expect(inGerman(() => [tn(1, '1 batch', '{n} batches'), tn(3, '1 batch', '{n} batches'), t('Save file')])).toEqual([
      '1 Satz',
      '3 Sätze',
      'Datei speichern',
    ])
  })
})
