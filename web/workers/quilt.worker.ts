/**
 * Reports of whole quilts, computed in a worker. Page and worker both hold the last quilt, so only what differs from it is posted.
 *
 * In      what differs from the previous quilt.
 * Out     the report; or what each way of joining means for the quilt; or how it nests with turns and pressings as they come out.
 */
import { compareWays, type Quilt, quiltReport, type QuiltReport, type WayFacts } from '../../geometry/index.ts'
import { serveJobs } from './serveJobs.ts'
import { applyDifference, type ValueDifference } from './valueDifference.ts'

let quilt: object = {}

function next(changes: ValueDifference): Quilt {
  quilt = applyDifference(quilt, changes)
  return quilt as Quilt
}

/** How a quilt nests, and how its places lie for it. */
export type Nesting = Pick<QuiltReport, 'pressing' | 'places'>

const jobs = {
  report: (changes: ValueDifference): QuiltReport => quiltReport(next(changes)),
  ways: (changes: ValueDifference): WayFacts[] => compareWays(next(changes)),
  nesting: (changes: ValueDifference): Nesting => {
    const { pressing, places } = quiltReport(next(changes))
    return { pressing, places }
  },
}

/** The jobs as the page asks for them: with the whole quilt. */
export type QuiltJobs = { readonly [Name in keyof typeof jobs]: (quilt: Quilt) => ReturnType<(typeof jobs)[Name]> }

serveJobs(jobs)
