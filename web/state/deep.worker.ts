/** What takes longer than a frame, worked out beside the page: layers of cloth, quilting routes, settings of copies, cloth, colourings of geese. */
import {
  type Block,
  type ClothFor,
  clothFor,
  type Ditch,
  type IronedSheet,
  type Layered,
  layered,
  type Nearest,
  nearestColouring,
  type QuiltingWishes,
  quiltingRoute,
  type Report,
  report,
  type SettingAnswer,
  type SettingAsk,
  settingReport,
  type StashFor,
  stashFor,
  type StashPiece,
  type Wings,
  wrongSide,
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

self.onmessage = ({ data }: MessageEvent<DeepWish>) => {
  self.postMessage(answer(data))
}

function answer(wish: DeepWish): DeepAnswer {
  try {
    if (wish.sort === 'layers') return { sort: 'layers', value: layered(wish.block) }
    if (wish.sort === 'report') return { sort: 'report', value: report(wish.block) }
    if (wish.sort === 'route') return { sort: 'route', value: quiltingRoute(wish.block, wish.wishes) }
    if (wish.sort === 'cloth') return { sort: 'cloth', value: clothAnd(wish.block, wish.copies, wish.stash) }
    if (wish.sort === 'nearest') return { sort: 'nearest', value: nearestColouring(wish.geese, wish.batches) }
    if (wish.sort === 'wrong') return { sort: 'wrong', value: wrongSide(wish.block) }
    return { sort: 'setting', value: settingReport(wish.block, wish.ask) }
  } catch (error) {
    return { sort: 'trouble', message: error instanceof Error ? error.message : String(error) }
  }
}

const clothAnd = (block: Block, copies: number, stash: readonly StashPiece[]): Extract<DeepAnswer, { sort: 'cloth' }>['value'] => ({
  cloth: clothFor(block, copies),
  stash: stash.length === 0 ? [] : stashFor(block, stash, copies),
})
