/** Colourings and palettes, worked out beside the page: a list of colourings is found once and judged a page at a time. */
import {
  type Block,
  type Blur,
  blurs,
  type ColouringPage,
  colouringPages,
  type ColouringWishes,
  type PaletteColour,
  paletteOf,
} from '../../geometry/index.ts'

export type ColourWish =
  | { readonly sort: 'page'; readonly block: Block; readonly wishes: ColouringWishes; readonly from: number; readonly count: number }
  | { readonly sort: 'blurs'; readonly block: Block }
  | { readonly sort: 'palette'; readonly pixels: Uint8ClampedArray; readonly count: number }
export type ColourAnswer =
  | { readonly sort: 'page'; readonly value: ColouringPage }
  | { readonly sort: 'blurs'; readonly value: readonly Blur[] }
  | { readonly sort: 'palette'; readonly value: readonly PaletteColour[] }
  | { readonly sort: 'trouble'; readonly message: string }

let last: { readonly key: string; readonly page: ReturnType<typeof colouringPages> } | null = null

self.onmessage = ({ data }: MessageEvent<{ readonly number: number; readonly wish: ColourWish }>) => {
  self.postMessage({ number: data.number, answer: answer(data.wish) })
}

function answer(wish: ColourWish): ColourAnswer {
  try {
    if (wish.sort === 'palette') return { sort: 'palette', value: paletteOf(wish.pixels, wish.count) }
    if (wish.sort === 'blurs') return { sort: 'blurs', value: blurs(wish.block) }
    const key = JSON.stringify([wish.block, wish.wishes])
    if (last?.key !== key) last = { key, page: colouringPages(wish.block, wish.wishes) }
    return { sort: 'page', value: last.page(wish.from, wish.count) }
  } catch (error) {
    return { sort: 'trouble', message: error instanceof Error ? error.message : String(error) }
  }
}
