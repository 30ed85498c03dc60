/** How many blocks the maker cuts for. It is chosen on the screen and is not part of the document. */
import { create } from 'zustand'

export const MOST_COPIES_CUT = 200

export const useCopies = create<number>(() => 1)
export const setCopies = (count: number): void => useCopies.setState(count, true)
