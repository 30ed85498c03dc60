/** What the worker answers only when a sheet is looked at: a first visit does not fetch it. */
import { clothFor, nearestColouring, quiltingRoute, report, settingReport, stashFor, wrongSide } from '../../geometry/index.ts'
import type { DeepAnswer, DeepWish } from './deepMessages.ts'

type Wish<Sort extends DeepWish['sort']> = Extract<DeepWish, { sort: Sort }>
type Value<Sort extends DeepAnswer['sort']> = Extract<DeepAnswer, { sort: Sort }> extends { value: infer V } ? V : never

export function answerLater(wish: Exclude<DeepWish, { sort: 'layers' }>): DeepAnswer {
  switch (wish.sort) {
    case 'report':
      return { sort: 'report', value: report(wish.block) }
    case 'route':
      return { sort: 'route', value: quiltingRoute(wish.block, wish.wishes) }
    case 'cloth':
      return { sort: 'cloth', value: clothAnd(wish) }
    case 'nearest':
      return { sort: 'nearest', value: nearestColouring(wish.geese, wish.batches) }
    case 'wrong':
      return { sort: 'wrong', value: wrongSide(wish.block) }
    case 'setting':
      return { sort: 'setting', value: settingReport(wish.block, wish.ask) }
  }
}

const clothAnd = ({ block, copies, stash }: Wish<'cloth'>): Value<'cloth'> => ({
  cloth: clothFor(block, copies),
  stash: stash.length === 0 ? [] : stashFor(block, stash, copies),
})
