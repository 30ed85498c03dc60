/** What is asked of the deep worker, and what it answers. */
import type {
  Block,
  ClothFor,
  Ditch,
  IronedSheet,
  Layered,
  Nearest,
  QuiltingWishes,
  Report,
  SettingAnswer,
  SettingAsk,
  StashFor,
  StashPiece,
  Wings,
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
