/** What takes longer than a frame, worked out beside the page: layers of cloth, quilting routes, settings of copies, cloth, colourings of geese, repairs. */
import { layered } from '../../geometry/index.ts'
import type { LazyJobs } from './deepJobs.ts'
import { serveJobs } from './serveJobs.ts'

/** The layers of every block are counted; the rest is loaded with the first request for it. */
const jobs = { layers: layered }
export type DeepJobs = typeof jobs & LazyJobs

serveJobs(jobs, async () => (await import('./deepJobs.ts')).lazyJobs)
