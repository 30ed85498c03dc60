/**
 * The report of the quilt that is open.
 *
 * In      every state of the quilt.
 * Out     the last report, which quilt it is of, and whether a newer one is being computed. A worker computes it, so the board never waits.
 */
import { useEffect } from 'react'
import { create } from 'zustand'
import type { Quilt, QuiltReport } from '../../geometry/index.ts'
import { getState } from '../document/store.ts'
import { quiltWorker } from '../workers/clients.ts'
import { useClient } from '../workers/useWorker.ts'

interface ReportState {
  readonly report: QuiltReport | null
  /** The quilt that the report is of. */
  readonly of: Quilt | null
  readonly working: boolean
  /** Why there is none. */
  readonly trouble: string | null
}

const NONE: ReportState = { report: null, of: null, working: true, trouble: null }

/** The last report, wherever it is shown. */
export const useQuiltReport = create<ReportState>(() => NONE)

/** Keeps the report up to date for as long as the quilt is open. */
export function useReportOf(quilt: Quilt): void {
  const client = useClient(quiltWorker)
  useEffect(() => {
    useQuiltReport.setState({ working: true })
    void client.request('report', quilt).then((reply) => {
      const working = getState().quilt?.block !== quilt
      if (reply.type === 'answer') useQuiltReport.setState({ report: reply.value, of: quilt, working, trouble: null })
      else if (reply.type === 'failed') useQuiltReport.setState({ report: null, of: quilt, working, trouble: reply.reason })
    })
  }, [client, quilt])
  useEffect(() => () => useQuiltReport.setState(NONE, true), [])
}
