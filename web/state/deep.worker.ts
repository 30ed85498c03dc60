/** What takes longer than a frame, worked out beside the page: layers of cloth, quilting routes, settings of copies. */
import {
  type Block,
  type Ditch,
  type IronedSheet,
  type Layered,
  layered,
  type QuiltingWishes,
  quiltingRoute,
  type SettingAnswer,
  type SettingAsk,
  settingReport,
  wrongSide,
} from '../../geometry/index.ts'

export type DeepWish =
  | { readonly sort: 'layers'; readonly block: Block }
  | { readonly sort: 'route'; readonly block: Block; readonly wishes: QuiltingWishes }
  | { readonly sort: 'setting'; readonly block: Block; readonly ask: SettingAsk }
  | { readonly sort: 'wrong'; readonly block: Block }
export type DeepAnswer =
  | { readonly sort: 'layers'; readonly value: Layered }
  | { readonly sort: 'route'; readonly value: Ditch }
  | { readonly sort: 'setting'; readonly value: SettingAnswer }
  | { readonly sort: 'wrong'; readonly value: readonly IronedSheet[] | null }
  | { readonly sort: 'trouble'; readonly message: string }

self.onmessage = ({ data }: MessageEvent<DeepWish>) => {
  self.postMessage(answer(data))
}

function answer(wish: DeepWish): DeepAnswer {
  try {
    if (wish.sort === 'layers') return { sort: 'layers', value: layered(wish.block) }
    if (wish.sort === 'route') return { sort: 'route', value: quiltingRoute(wish.block, wish.wishes) }
    if (wish.sort === 'wrong') return { sort: 'wrong', value: wrongSide(wish.block) }
    return { sort: 'setting', value: settingReport(wish.block, wish.ask) }
  } catch (error) {
    return { sort: 'trouble', message: error instanceof Error ? error.message : String(error) }
  }
}
