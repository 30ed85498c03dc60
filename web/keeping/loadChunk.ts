/** A part of the page that is fetched when it is asked for; where it does not come, that is said, and nothing else is done. */
import { t } from '../words/words.ts'
import { look } from '../document/store.ts'

export async function part<Module>(fetched: () => Promise<Module>): Promise<Module | null> {
  return fetched().catch(() => {
    look({ notice: t('This part of the page did not come. Load the page anew as soon as you are connected; what is kept in this browser stays.') })
    return null
  })
}
