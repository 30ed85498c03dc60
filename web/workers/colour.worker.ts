/** Finds colourings and palettes in a worker. A list of colourings is found once and evaluated a page at a time. */
import { type Block, blurs, type ColouringPage, colouringPages, type ColouringRequest, paletteOf } from '../../geometry/index.ts'
import { serveJobs } from './serveJobs.ts'

const jobs = { page, blurs, palette: paletteOf }
export type ColourJobs = typeof jobs

serveJobs(jobs)

let last: { readonly key: string; readonly page: ReturnType<typeof colouringPages> } | null = null

function page(block: Block, wishes: ColouringRequest, from: number, count: number): ColouringPage {
  const key = JSON.stringify([block, wishes])
  if (last?.key !== key) last = { key, page: colouringPages(block, wishes) }
  return last.page(from, count)
}
