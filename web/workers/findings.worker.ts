/**
 * The findings of a large block, beside the page: both hold the last block and the last findings, and only what differs goes between them.
 *
 * In      what differs from the block before.
 * Out     what differs from the findings before.
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
