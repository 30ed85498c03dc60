/** A whole quilt as SVG text that prints at the quilt's own size: positions, frames, strips, borders, and where seams of two blocks meet. */
import type { QuiltReport } from '../../quilt/report.ts'
import type { Quilt } from '../../values/quilt.ts'
import type { PointMark } from '../../writing/booklet/values.ts'
import { quiltContext } from '../../writing/quilt/quiltContext.ts'
import { quiltDrawing } from '../../writing/quilt/quiltPicture.ts'
import { drawingSvg } from '../drawingSvg.ts'

/** Lines and letters of a picture at its own size are heavier than those of one on a page. */
const WEIGHT = 1.8

/** `cloth` as it will look; `value` in greys; `outline` to colour in; `seams` with its crossings between blocks marked. */
export const QUILT_VIEWS = ['cloth', 'value', 'outline', 'seams'] as const
type QuiltView = (typeof QUILT_VIEWS)[number]

export function quiltSvg(view: QuiltView, quilt: Quilt, report: QuiltReport): string {
  const context = quiltContext(quilt, report)
  const marks =
    view === 'seams'
      ? report.meetings.map(({ at, verdict }) => ({ at: [Number(at[0]), Number(at[1])] as const, mark: verdict satisfies PointMark }))
      : []
  return drawingSvg(quiltDrawing(context, { marks }), {
    unit: context.unit,
    fabrics: context.fabrics,
    fabricStyle: view === 'seams' ? 'cloth' : view,
    weight: WEIGHT,
  })
}
