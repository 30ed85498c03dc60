/**
 * What the maker chose for other colourings: it survives leaving the sheet, as long as the same block is on the board. It is not part of the document.
 */
import { create } from 'zustand'
import { useStore } from '../../document/store.ts'
import { FIRST_OPTIONS, type Options } from './ColouringOptions.tsx'

interface Choices {
  readonly options: Options
  /** Ids of the fabrics to use; null for the first few. */
  readonly picked: readonly string[] | null
}

const FIRST: Choices = { options: FIRST_OPTIONS, picked: null }
const useChoices = create<Choices & { readonly of: string | null }>(() => ({ ...FIRST, of: null }))

export function useColouringChoices(): Choices & { readonly choose: (next: Partial<Choices>) => void } {
  const of = useStore(({ currentBlock }) => currentBlock.id)
  const stored = useChoices()
  const { options, picked } = stored.of === of ? stored : FIRST
  return { options, picked, choose: (next) => useChoices.setState({ options, picked, ...next, of }) }
}
