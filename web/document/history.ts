/**
 * The history of the document: every edit is a step that can be undone.
 *
 * In      the present and an edit (a named pure change), or a step back or forward.
 * Out     a new history; the same one where nothing changed.
 * Size    a step holds only what differs, as text: a day of editing a large block stays within a few megabytes.
 */
import type { Block, QuiltEditName } from '../../geometry/index.ts'
import { type Change, applyChanges, changesBetween, packChanges, unpackChanges } from './difference.ts'
import type { Doc } from './document.ts'
import { type DocEdit, editResult } from './editResult.ts'

/** An edit's name; for a step stored before edits had codes, its name as text. */
type StepName = QuiltEditName | string

export interface Step {
  readonly name: StepName
  /** The changes forward and back, packed. */
  readonly redo: string
  readonly undo: string
  readonly merge?: string
}

export interface History<D extends Doc = Block> {
  /** The document as it is now. */
  readonly block: D
  readonly past: readonly Step[]
  readonly future: readonly Step[]
}

export const newHistory = <D extends Doc>(block: D): History<D> => ({ block, past: [], future: [] })

export function applyEdit<D extends Doc>(history: History<D>, edit: DocEdit<D>): History<D> {
  const { name, merge } = edit
  const block = editResult(history.block, edit)
  if (block === history.block) return history
  const last = history.past.at(-1)
  if (merge === undefined || last?.merge !== merge || history.future.length > 0) return moveThrough(history, block, name, merge)
  // Merged edits are one step, from the block before the first of them.
  return moveThrough({ ...undoStep(history), future: [] }, block, name, merge)
}

/** Replaces the document by another one, as a step that can be undone. */
export function replaceBlock<D extends Doc>(history: History<D>, block: D, name: StepName): History<D> {
  return moveThrough(history, block, name)
}

function moveThrough<D extends Doc>(history: History<D>, block: D, name: StepName, merge?: string): History<D> {
  const redo = changesBetween(history.block, block)
  if (redo.length === 0) return history
  const step: Step = {
    name,
    redo: packChanges(redo),
    undo: packChanges(changesBetween(block, history.block)),
    ...(merge === undefined ? {} : { merge }),
  }
  return { block, past: [...history.past, step], future: [] }
}

export function undoStep<D extends Doc>({ block, past, future }: History<D>): History<D> {
  const step = past.at(-1)
  if (step === undefined) return { block, past, future }
  return { block: applyPacked(block, step.undo), past: past.slice(0, -1), future: [step, ...future] }
}

export function redoStep<D extends Doc>({ block, past, future }: History<D>): History<D> {
  const [step, ...later] = future
  if (step === undefined) return { block, past, future }
  return { block: applyPacked(block, step.redo), past: [...past, step], future: later }
}

/** The document that some steps lead to, forward or back. */
export const applyPacked = <D extends Doc>(block: D, way: string): D => applyChanges(block, unpackChanges(way))

/** A step as it was stored before steps were packed. */
export interface LooseStep {
  readonly name: string
  readonly redo: readonly Change[]
  readonly undo: readonly Change[]
  readonly merge?: string
}

export const packStep = ({ redo, undo, ...rest }: LooseStep): Step => ({ ...rest, redo: packChanges(redo), undo: packChanges(undo) })
