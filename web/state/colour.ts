/**
 * Asks beside the page for colourings and palettes.
 *
 * In      a wish.
 * Out     its answer. A newer wish of the same sort ends an older one that is still being worked out: that one is never answered.
 */
import type { ColourAnswer, ColourWish } from './colour.worker.ts'

const workers = new Map<ColourWish['sort'], { readonly worker: Worker; busy: boolean }>()
let asked = 0

export function askColour(wish: ColourWish): Promise<ColourAnswer> {
  const known = workers.get(wish.sort)
  if (known?.busy) known.worker.terminate()
  const fresh =
    known === undefined || known.busy
      ? { worker: new Worker(new URL('./colour.worker.ts', import.meta.url), { type: 'module' }), busy: true }
      : Object.assign(known, { busy: true })
  workers.set(wish.sort, fresh)
  const number = ++asked
  return new Promise((resolve) => {
    const done = (answer: ColourAnswer): void => {
      fresh.busy = false
      resolve(answer)
    }
    fresh.worker.onmessage = ({ data }: MessageEvent<{ readonly number: number; readonly answer: ColourAnswer }>) => {
      if (data.number === number) done(data.answer)
    }
    fresh.worker.onerror = (event) => {
      event.preventDefault()
      done({ sort: 'trouble', message: 'it could not be worked out beside the page' })
    }
    fresh.worker.postMessage({ number, wish })
  })
}
