/** The worker for what takes longer than a frame: layers of fabric, quilting routes, settings, fabric to buy, colourings of geese, repairs. */
import { layered } from '../../geometry/index.ts'
import type { LazyJobs } from './deepJobs.ts'
import { serveJobs } from './serveJobs.ts'

/** Layers are counted for every block; the code for the rest is loaded with the first request for it. */
const jobs = { layers: layered }
export type DeepJobs = typeof jobs & LazyJobs

serveJobs(jobs, async () => (await import('./deepJobs.ts')).lazyJobs)
