/** Loads a part of the page when it is needed. If it cannot be fetched, a notice says so and nothing else happens. */
import { t } from '../words/words.ts'
import { setView } from '../document/store.ts'

export async function loadChunk<Module>(fetched: () => Promise<Module>): Promise<Module | null> {
  return fetched().catch(() => {
    setView({ notice: t('This part of the page did not come. Load the page anew as soon as you are connected; what is kept in this browser stays.') })
    return null
  })
}
