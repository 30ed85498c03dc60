import { expect } from 'vitest'
import type { Edit } from '../../geometry/edits/unitEdits.ts'
import { readBlock, writeBlock } from '../../geometry/block/read.ts'
import type { Block } from '../../geometry/values/block.ts'
import { applyEdit, redoStep, undoStep } from '../../web/document/history.ts'

/** What holds of every edit: the block before stays, the way back and forth is exact, and the block after is a good file. */
export function checkEdit(before: Block, edit: Edit): Block {
  const kept = JSON.stringify(before)
  const history = applyEdit({ block: before, past: [], future: [] }, edit)
  expect(JSON.stringify(before)).toBe(kept)
  const after = history.block
  expect(undoStep(history).block).toEqual(before)
  expect(redoStep(undoStep(history)).block).toEqual(after)
  expect(readBlock(writeBlock(after))).toEqual({ ok: true, value: JSON.parse(JSON.stringify(after)) })
  return after
}

/** Several edits, one after another. */
export const checkEdits = (before: Block, ...list: Edit[]): Block => list.reduce(checkEdit, before)
