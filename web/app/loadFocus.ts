/** Loads the code that moves the keyboard's focus, when a key is first pressed. */
import { loadChunk } from '../keeping/loadChunk.ts'

export const loadFocus = () => loadChunk(() => import('../controls/focus.ts'))
