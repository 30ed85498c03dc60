/** What takes longer than a frame, worked out beside the page: layers of cloth, quilting routes, settings of copies, cloth, colourings of geese. */
import {
  type Block,
  type ClothFor,
  type Ditch,
  type IronedSheet,
  type Layered,
  layered,
  type Nearest,
  type QuiltingWishes,
  type Report,
  type SettingAnswer,
  type SettingAsk,
  type StashFor,
  type StashPiece,
  type Wings,
} from '../../geometry/index.ts'

export type DeepWish =
  | { readonly sort: 'layers'; readonly block: Block }
  | { readonly sort: 'report'; readonly block: Block }
  | { readonly sort: 'route'; readonly block: Block; readonly wishes: QuiltingWishes }
  | { readonly sort: 'setting'; readonly block: Block; readonly ask: SettingAsk }
  | { readonly sort: 'cloth'; readonly block: Block; readonly copies: number; readonly stash: readonly StashPiece[] }
  | { readonly sort: 'nearest'; readonly geese: readonly Wings[]; readonly batches: number }
  | { readonly sort: 'wrong'; readonly block: Block }
export type DeepAnswer =
  | { readonly sort: 'layers'; readonly value: Layered }
  | { readonly sort: 'report'; readonly value: Report }
  | { readonly sort: 'route'; readonly value: Ditch }
  | { readonly sort: 'setting'; readonly value: SettingAnswer }
  | { readonly sort: 'cloth'; readonly value: { readonly cloth: ClothFor; readonly stash: readonly StashFor[] } }
  | { readonly sort: 'nearest'; readonly value: Nearest | null }
  | { readonly sort: 'wrong'; readonly value: readonly IronedSheet[] | null }
  | { readonly sort: 'trouble'; readonly message: string }

self.onmessage = async ({ data }: MessageEvent<DeepWish>) => {
  self.postMessage(await answer(data))
}

/** The layers are told of every block; the rest comes with its first wish. */
async function answer(wish: DeepWish): Promise<DeepAnswer> {
  try {
    if (wish.sort === 'layers') return { sort: 'layers', value: layered(wish.block) }
    return (await import('./deepLater.ts')).answerLater(wish)
  } catch (error) {
    return { sort: 'trouble', message: error instanceof Error ? error.message : String(error) }
  }
}
