/**
 * The one history of the document: every edit is a step forward with its way back.
 *
 * In      the present and an edit (a named pure change), or a step back or forward.
 * Out     a new history; the same one where nothing changed.
 */
import { applyPatches, enablePatches, type Objectish, type Patch, produceWithPatches } from 'immer'
import type { Block, Edit } from '../../geometry/index.ts'

enablePatches()

export interface Step {
  readonly name: string
  readonly redo: readonly Patch[]
  readonly undo: readonly Patch[]
  readonly merge?: string
}

export interface History {
  readonly block: Block
  readonly past: readonly Step[]
  readonly future: readonly Step[]
}

export function apply(history: History, { name, change, merge }: Edit): History {
  const [block, redo, undo] = produceWithPatches(history.block as Objectish, (draft) => {
    change(draft as Parameters<typeof change>[0])
  })
  if (redo.length === 0) return history
  const last = history.past.at(-1)
  if (merge === undefined || last?.merge !== merge || history.future.length > 0)
    return stepped(history, block as Block, { name, redo, undo, ...(merge === undefined ? {} : { merge }) })
  // Merged edits write the same place, so the older way back and the newer way forward are the whole of it.
  return stepped({ ...history, past: history.past.slice(0, -1) }, block as Block, { name, redo, undo: last.undo, merge })
}

/** Another block in place of this one: a step like any other, so that the one before can be had back. */
export function replaced(history: History, block: Block, name: string): History {
  return stepped(history, block, {
    name,
    redo: [{ op: 'replace', path: [], value: block }],
    undo: [{ op: 'replace', path: [], value: history.block }],
  })
}

function stepped(history: History, block: Block, step: Step): History {
  return { block, past: [...history.past, step], future: [] }
}

export function undone({ block, past, future }: History): History {
  const step = past.at(-1)
  if (step === undefined) return { block, past, future }
  return { block: applyPatches(block as Objectish, step.undo as Patch[]) as Block, past: past.slice(0, -1), future: [step, ...future] }
}

export function redone({ block, past, future }: History): History {
  const [step, ...later] = future
  if (step === undefined) return { block, past, future }
  return { block: applyPatches(block as Objectish, step.redo as Patch[]) as Block, past: [...past, step], future: later }
}
