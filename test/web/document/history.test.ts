import { describe, expect, it } from 'vitest'
import { message, moveUnits, readBlock, recolourPatch, removeUnits, setName, turnUnits, writeBlock } from '../../../geometry/index.ts'
import { emptyGrid } from '../../../web/document/starters/emptyGrid.ts'
import { eveningStar } from '../../../web/document/starters/eveningStar.ts'
import { lantern } from '../../../web/document/starters/lantern.ts'
import { applyEdit, type History, redoStep, replaceBlock, undoStep } from '../../../web/document/history.ts'

const start: History = { block: eveningStar, past: [], future: [] }

describe('the history', () => {
  it('goes back to the very block it came from, and forward again', () => {
    const edits = [
      recolourPatch('goose-top', 'leftWing', 'moss'),
      turnUnits(['goose-top']),
      moveUnits(['centre'], '1/3', 0.5),
      removeUnits(['corner-1']),
    ]
    const done = edits.reduce(applyEdit, start)
    const back = edits.reduce((history) => undoStep(history), done)
    expect(back.block).toEqual(eveningStar)
    expect(edits.reduce((history) => redoStep(history), back).block).toEqual(done.block)
  })

  it('keeps nothing of an edit that changes nothing', () => {
    expect(applyEdit(start, recolourPatch('goose-top', 'leftWing', 'no-such-fabric'))).toBe(start)
  })

  it('takes a name typed letter by letter as one step', () => {
    const typed = ['D', 'Du', 'Dusk'].reduce((history, name) => applyEdit(history, setName(name)), start)
    expect(typed.past).toHaveLength(1)
    expect(undoStep(typed).block).toEqual(eveningStar)
    expect(redoStep(undoStep(typed)).block.name).toBe('Dusk')
  })

  it('has another block back after one was opened in its place', () => {
    const opened = replaceBlock(start, lantern, message('begin-again'))
    expect(opened.block.name).toBe(lantern.name)
    expect(undoStep(opened).block).toEqual(eveningStar)
  })
})

describe('the starters', () => {
  it.each([eveningStar, lantern, emptyGrid])('$name reads as a block file', (block) => {
    expect(readBlock(writeBlock(block))).toEqual({ ok: true, value: block })
  })
})
