/** The maker's words on the booklet: read, edited, undone, kept when the block changes, and marked where it has moved on under them. */
import { describe, expect, it } from 'vitest'
import {
  type Block,
  bookletOf,
  type BookletStep,
  checkBlock,
  dropStepWords,
  type Edit,
  editStep,
  keepStepWords,
  programWords,
  readBlock,
  recolourPatch,
  removeUnits,
  report,
  restoreStep,
  setBookletBy,
  setBookletTitle,
  setGrid,
  setIntroduction,
  setName,
  setStepNote,
  setStepPhotograph,
  writeBlock,
} from '../../geometry/index.ts'
import { applyEdit, redoStep, undoStep, newHistory } from '../../web/document/history.ts'
import { STAR } from '../writing/star.ts'

/** The block after edits; each is undone and redone on the way, and the file read back. */
function edited(block: Block, ...edits: Edit[]): Block {
  return edits.reduce((before, edit) => {
    const history = applyEdit(newHistory(before), edit)
    expect(undoStep(history).block, `undo ${edit.name}`).toEqual(before)
    expect(redoStep(undoStep(history)).block, `redo ${edit.name}`).toEqual(history.block)
    expect(readBlock(writeBlock(history.block))).toEqual({ ok: true, value: history.block })
    return history.block
  }, block)
}

const stepsOf = (block: Block): BookletStep[] => bookletOf(report(block), block).parts.flatMap(({ steps }) => [...steps])
const titled = (block: Block, title: RegExp): BookletStep => {
  const step = stepsOf(block).find((one) => title.test(one.title))
  if (step === undefined) throw new Error(`no step ${title}`)
  return step
}

const GEESE = /^Make 4 geese/
const words = (block: Block, title: RegExp, said: string): Edit => {
  const { key, sentences } = titled(block, title)
  return editStep(key, said, programWords(sentences))
}

describe('edits of the booklet', () => {
  it('title it, put a name on it, introduce it, and take all that away again', () => {
    const own = edited(STAR, setBookletTitle('For the first class'), setBookletBy('An invented maker'), setIntroduction('Begin here.'))
    expect(own.booklet).toEqual({ title: 'For the first class', by: 'An invented maker', introduction: 'Begin here.' })
    expect(edited(own, setBookletTitle(''), setBookletBy(' '), setIntroduction(''))).not.toHaveProperty('booklet')
  })

  it('keep words, a note and a photograph on a step, each by itself', () => {
    const { key } = titled(STAR, GEESE)
    const own = edited(STAR, words(STAR, GEESE, 'My way.'), setStepNote(key, 'Slowly.'), setStepPhotograph(key, 'data:image/png;base64,AAAA'))
    expect(titled(own, GEESE)).toMatchObject({
      edited: { words: 'My way.', stale: false },
      note: 'Slowly.',
      photograph: 'data:image/png;base64,AAAA',
    })
    const back = edited(own, restoreStep(key))
    expect(titled(back, GEESE)).not.toHaveProperty('edited')
    expect(titled(back, GEESE).note).toBe('Slowly.')
    expect(edited(back, setStepNote(key, ''), setStepPhotograph(key, null))).not.toHaveProperty('booklet')
  })

  it('restore the program’s text where hers is emptied', () => {
    const own = edited(STAR, words(STAR, GEESE, 'My way.'))
    const { key, sentences } = titled(own, GEESE)
    expect(edited(own, editStep(key, ' ', programWords(sentences)))).not.toHaveProperty('booklet')
  })

  it('leave no trace where her text equals the program’s', () => {
    const { key, sentences } = titled(STAR, GEESE)
    expect(edited(STAR, editStep(key, programWords(sentences), programWords(sentences)))).not.toHaveProperty('booklet')
  })

  it.each(['unit:__proto__', 'constructor', 'toString'])('take a step called %s for one like any other', (key) => {
    const own = edited(STAR, setStepNote(key, 'a note'))
    expect(Object.entries(own.booklet?.steps ?? {})).toEqual([[key, { note: 'a note' }]])
  })
})

describe('text of a step whose block has changed', () => {
  const own = edited(STAR, words(STAR, GEESE, 'My way.'))

  it('are marked once the program would say something else there, until the maker says that they hold', () => {
    const smaller = edited(own, setGrid({ cell: 2 }))
    const step = titled(smaller, GEESE)
    expect(step.edited).toEqual({ words: 'My way.', stale: true })
    const held = edited(smaller, keepStepWords(step.key, programWords(step.sentences)))
    expect(titled(held, GEESE).edited).toEqual({ words: 'My way.', stale: false })
  })

  it('are not marked where the change is elsewhere', () => {
    const other = edited(own, recolourPatch('m', 'patch', 'plum'), setName('Another star'))
    expect(stepsOf(other).find(({ edited }) => edited !== undefined)?.edited).toEqual({ words: 'My way.', stale: false })
  })

  it('stay with the step when the unit that named it is removed', () => {
    const { key } = titled(own, GEESE)
    expect(key).toBe('unit:g1')
    const fewer = edited(own, removeUnits(['g2']))
    expect(titled(fewer, /^Make 3 geese/).edited).toEqual({ words: 'My way.', stale: true })
  })

  it('are listed separately and kept where their step is gone, until deleted', () => {
    const none = edited(own, removeUnits(['g1', 'g2', 'g3', 'g4']))
    const { orphans } = bookletOf(report(none), none)
    expect(orphans).toEqual([{ key: 'unit:g1', words: 'My way.' }])
    expect(edited(none, dropStepWords('unit:g1'))).not.toHaveProperty('booklet')
  })
})

describe('a file whose booklet cannot be used', () => {
  it.each([
    [5, 'booklet'],
    [[], 'booklet'],
    [{ title: 5 }, 'booklet.title'],
    [{ by: null }, 'booklet.by'],
    [{ introduction: [] }, 'booklet.introduction'],
    [{ steps: [] }, 'booklet.steps'],
    [{ steps: { 'cut:linen': 'mine' } }, 'booklet.steps["cut:linen"]'],
    [{ steps: { 'cut:linen': { words: 1 } } }, 'booklet.steps["cut:linen"].words'],
    [{ steps: { 'cut:linen': { photograph: 'https://example.org/a.jpg' } } }, 'booklet.steps["cut:linen"].photograph'],
    [{ steps: { 'cut:linen': { photograph: 'data:image/svg+xml;base64,AAAA' } } }, 'booklet.steps["cut:linen"].photograph'],
  ])('%j is refused, naming %s', (booklet, place) => {
    const read = checkBlock({ ...STAR, booklet })
    expect(read).toMatchObject({ ok: false, place })
  })

  it('keeps fields that it does not know', () => {
    const block = { ...STAR, booklet: { later: [1], steps: { 'cut:linen': { words: 'a', later: true } } } }
    expect(checkBlock(block)).toEqual({ ok: true, value: block })
  })
})
