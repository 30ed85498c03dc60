/** Loads a part of the page when it is needed. If it cannot be fetched, a notice says so and nothing else happens. */
import { t } from '../words/words.ts'
import { setView } from '../document/store.ts'

export async function loadChunk<Module>(fetched: () => Promise<Module>): Promise<Module | null> {
  return fetched().catch(() => {
    setView({ notice: t('This part of the page didn’t load. Reload the page when you’re online again; your saved blocks are safe.') })
    return null
  })
}
