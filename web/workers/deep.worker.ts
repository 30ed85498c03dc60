/** What takes longer than a frame, worked out beside the page: layers of cloth, quilting routes, settings of copies, cloth, colourings of geese. */
import { layered } from '../../geometry/index.ts'
import type { DeepAnswer, DeepWish } from './deepMessages.ts'

self.onmessage = async ({ data }: MessageEvent<DeepWish>) => {
  self.postMessage(await answer(data))
}

/** The layers are told of every block; the rest comes with its first wish. */
async function answer(wish: DeepWish): Promise<DeepAnswer> {
  try {
    if (wish.sort === 'layers') return { sort: 'layers', value: layered(wish.block) }
    return (await import('./deepJobs.ts')).answerLater(wish)
  } catch (error) {
    return { sort: 'trouble', message: error instanceof Error ? error.message : String(error) }
  }
}
