/** What undo and redo say of a step: in the language of the page now, whatever it was when the step was made. */
import { afterEach, describe, expect, it } from 'vitest'
import { message, setName } from '../../../geometry/index.ts'
import { germanMessages } from '../../../geometry/words/german.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'
import { applyEdit, type History, newHistory, replaceBlock } from '../../../web/document/history.ts'
import { openHistory, getState, redo, undo } from '../../../web/document/store.ts'
import { german } from '../../../web/words/german.ts'
import { setWords } from '../../../web/words/words.ts'

const inGerman = (): void => setWords('de', german, germanMessages)
const inEnglish = (): void => setWords('en', {}, null)
afterEach(inEnglish)

/** As a page before wrote it: the name in words. */
function withOldName(name: string): History {
  const history = applyEdit(newHistory(eveningStar), setName('Dusk'))
  return { ...history, past: history.past.map((step) => ({ ...step, name })) }
}

describe('the names of steps', () => {
  it('are stored by code, with nothing said in any language', () => {
    inGerman()
    const { past } = replaceBlock(newHistory(eveningStar), lantern, message('go-back-to-version'))
    expect(past.map(({ name }) => name)).toEqual([{ code: 'go-back-to-version', params: {} }])
  })

  it('follow the language of the page', () => {
    inGerman()
    openHistory(replaceBlock(newHistory(eveningStar), lantern, message('go-back-to-version')))
    inEnglish()
    undo()
    expect(getState().view.notice).toBe('Undone: go back to a version.')
    inGerman()
    redo()
    expect(getState().view.notice).toContain('zu einer Fassung zurückgehen')
  })

  it.each(['name the block', 'zu einer Fassung zurückgehen'])('stand as they are where they were kept in words: %s', (name) => {
    for (const language of [inEnglish, inGerman]) {
      language()
      openHistory(withOldName(name))
      undo()
      expect(getState().view.notice).toContain(name)
    }
  })

  it('of a later version are said by their code', () => {
    openHistory({ ...withOldName(''), past: withOldName('').past.map((step) => ({ ...step, name: { code: 'stretch-block', params: {} } as never })) })
    undo()
    expect(getState().view.notice).toBe('Undone: stretch-block.')
  })
})
