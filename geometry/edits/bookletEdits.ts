/**
 * Edits of the booklet's text: what the maker writes in it herself.
 *
 * In      her text, or an empty text to remove it; the key of a step.
 * Out     a named change of the block's `booklet`. Empty fields are removed from the file.
 */
import type { Draft, Edit, Mutable } from './unitEdits.ts'
import type { BookletWords, StepWords } from '../values/block.ts'
import { type EditName, message } from '../values/messages.ts'

type DraftWords = Mutable<BookletWords>
type DraftStep = Mutable<StepWords>

function changed(draft: Draft, change: (booklet: DraftWords) => void): void {
  const booklet = draft.booklet ?? {}
  change(booklet)
  if (booklet.steps !== undefined && Object.keys(booklet.steps).length === 0) delete booklet.steps
  if (Object.keys(booklet).length > 0) draft.booklet = booklet
  else delete draft.booklet
}

function setWord(name: 'title' | 'by' | 'introduction', words: string, edit: EditName): Edit {
  return {
    name: edit,
    merge: `booklet ${name}`,
    change: (draft) =>
      changed(draft, (booklet) => {
        if (words.trim() === '') delete booklet[name]
        else booklet[name] = words
      }),
  }
}

/** The booklet's title; an empty one removes it. */
export const setBookletTitle = (title: string): Edit => setWord('title', title, message('title-booklet'))
/** Who the booklet is by; an empty text removes it. */
export const setBookletBy = (by: string): Edit => setWord('by', by, message('sign-booklet'))
/** The maker's introduction to the booklet; an empty text removes it. */
export const setIntroduction = (words: string): Edit => setWord('introduction', words, message('introduce-booklet'))

/** How many blocks the booklet makes, a whole number from 1; 1 leaves no trace in the file. */
export const setBookletBlocks = (blocks: number): Edit => ({
  name: message('set-booklet-blocks'),
  merge: 'booklet blocks',
  change: (draft) =>
    changed(draft, (booklet) => {
      if (blocks === 1) delete booklet.blocks
      else booklet.blocks = blocks
    }),
})

function onStep(draft: Draft, key: string, change: (step: DraftStep) => void): void {
  changed(draft, (booklet) => {
    const steps = booklet.steps ?? {}
    const step: DraftStep = Object.hasOwn(steps, key) ? (steps[key] as DraftStep) : {}
    change(step)
    if (Object.keys(step).length > 0) steps[key] = step
    else delete steps[key]
    booklet.steps = steps
  })
}

/** Replaces a step's text with hers, or restores the program's where hers is empty. `of`: the program's text now, to detect later whether the block has changed since. */
export const editStep = (key: string, words: string, of: string): Edit => ({
  name: message('change-step-words'),
  merge: `booklet step ${key}`,
  change: (draft) =>
    onStep(draft, key, (step) => {
      if (words === of || words.trim() === '') {
        delete step.words
        delete step.of
      } else {
        step.words = words
        step.of = of
      }
    }),
})

/** Keeps her text although the block has changed: it no longer counts as out of date. */
export const keepStepWords = (key: string, of: string): Edit => ({
  name: message('keep-step-words'),
  change: (draft) =>
    onStep(draft, key, (step) => {
      if (step.words !== undefined) step.of = of
    }),
})

/** Restores the program's text; notes and photograph stay. */
export const restoreStep = (key: string): Edit => ({
  name: message('restore-step-words'),
  change: (draft) =>
    onStep(draft, key, (step) => {
      delete step.words
      delete step.of
    }),
})

/** The maker's note on the step with this key; an empty text removes it. */
export const setStepNote = (key: string, note: string): Edit => ({
  name: message('note-step'),
  merge: `booklet note ${key}`,
  change: (draft) =>
    onStep(draft, key, (step) => {
      if (note.trim() === '') delete step.note
      else step.note = note
    }),
})

/** Sets a step's photograph: a data URL, or null to remove it. */
export const setStepPhotograph = (key: string, photograph: string | null): Edit => ({
  name: message(photograph === null ? 'remove-step-photograph' : 'add-step-photograph'),
  change: (draft) =>
    onStep(draft, key, (step) => {
      if (photograph === null) delete step.photograph
      else step.photograph = photograph
    }),
})

/** Deletes text whose step is gone; only the maker does this. */
export const dropStepWords = (key: string): Edit => ({
  name: message('drop-step-words'),
  change: (draft) =>
    onStep(draft, key, (step) => {
      for (const name of Object.keys(step)) delete step[name as keyof DraftStep]
    }),
})
