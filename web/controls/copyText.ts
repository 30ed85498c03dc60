/** Copies text to the clipboard. The notice says whether the browser allowed it; the caller gives both sentences. */
import { setView } from '../document/store.ts'

export async function copyText(text: string, copied: string, refused: string): Promise<void> {
  try {
    await navigator.clipboard.writeText(text)
    setView({ notice: copied })
  } catch {
    setView({ notice: refused })
  }
}
