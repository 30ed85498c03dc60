/**
 * The findings of a large block, computed in a worker. Page and worker both hold the last block and findings, so only differences are posted.
 *
 * In      what differs from the previous block.
 * Out     what differs from the previous findings.
 */
import { type Block, type Findings, liveFindings } from '../../geometry/index.ts'
import { serveJobs } from './serveJobs.ts'
import { applyDifference, type ValueDifference, valueDifference } from './valueDifference.ts'

let block: object = {}
let findings: Partial<Findings> = {}
const follow = liveFindings()

serveJobs({ findings: next })

function next(changes: ValueDifference): ValueDifference {
  block = applyDifference(block, changes)
  const before = findings
  findings = follow(block as Block)
  return valueDifference(before, findings)
}
