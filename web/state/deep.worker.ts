/** What takes longer than a frame, worked out beside the page: layers of cloth, quilting routes, settings of copies. */
import {
  type Block,
  type Ditch,
  type Layered,
  layered,
  type QuiltingWishes,
  quiltingRoute,
  type SettingAnswer,
  type SettingAsk,
  settingReport,
} from '../../geometry/index.ts'

export type DeepWish =
  | { readonly sort: 'layers'; readonly block: Block }
  | { readonly sort: 'route'; readonly block: Block; readonly wishes: QuiltingWishes }
  | { readonly sort: 'setting'; readonly block: Block; readonly ask: SettingAsk }
export type DeepAnswer =
  | { readonly sort: 'layers'; readonly value: Layered }
  | { readonly sort: 'route'; readonly value: Ditch }
  | { readonly sort: 'setting'; readonly value: SettingAnswer }
  | { readonly sort: 'trouble'; readonly message: string }

self.onmessage = ({ data }: MessageEvent<DeepWish>) => {
  self.postMessage(answer(data))
}

function answer(wish: DeepWish): DeepAnswer {
  try {
    if (wish.sort === 'layers') return { sort: 'layers', value: layered(wish.block) }
    if (wish.sort === 'route') return { sort: 'route', value: quiltingRoute(wish.block, wish.wishes) }
    return { sort: 'setting', value: settingReport(wish.block, wish.ask) }
  } catch (error) {
    return { sort: 'trouble', message: error instanceof Error ? error.message : String(error) }
  }
}
