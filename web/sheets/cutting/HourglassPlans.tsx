/** Hourglasses made together, two at a time: shown where that saves squares, or where only that can make them from squares. */
import { useMemo } from 'react'
import { type Block, type FabricPair, type HourglassPlan, hourglassPlans, isSharing } from '../../../geometry/index.ts'
import { t, tn } from '../../words/words.ts'
import { saySides } from '../../words/sizes.ts'

export function HourglassPlans({ block }: { readonly block: Block }) {
  const plans = useMemo(() => hourglassPlans(block).filter(isSharing), [block])
  return plans.map((plan) => <Plan key={`${plan.finished} ${plan.square}`} plan={plan} block={block} />)
}

function Plan({ plan, block }: { readonly plan: HourglassPlan; readonly block: Block }) {
  const { unit } = block.measure
  const name = (id: string): string => block.fabrics.find((fabric) => fabric.id === id)?.name ?? id
  const pair = ([a, b]: FabricPair): string => t('{a} with {b}', { a: name(a), b: name(b) })
  return (
    <details className="order">
      <summary>{tn(plan.runs, 'Hourglasses made together: 1 pair of squares', 'Hourglasses made together: {n} pairs of squares')}</summary>
      <p className="hint">
        {t('Cut squares {size}. Trim the hourglasses to {trimmed}.', {
          size: saySides([plan.square, plan.square], unit),
          trimmed: saySides([plan.unfinished, plan.unfinished], unit),
        })}{' '}
        {plan.runs < plan.alone && tn(plan.alone, 'Made separately, they need 1 pair.', 'Made separately, they need {n} pairs.')}{' '}
        {plan.proved ? t('That’s the fewest possible.') : t('That’s the fewest found.')}{' '}
        {tn(
          plan.singles,
          'Cut as single triangles, they need 1 square and are sewn on the bias.',
          'Cut as single triangles, they need {n} squares and are sewn on the bias.',
        )}
      </p>
      <ol className="moves">
        {plan.pairs.map(({ fabrics, count }) => (
          <li key={fabrics.join()}>
            {tn(
              count,
              'Sew 1 pair of squares into two half-square triangles: {pair}.',
              'Sew {n} pairs of squares into two half-square triangles each: {pair}.',
              {
                pair: pair(fabrics),
              },
            )}
          </li>
        ))}
        {plan.layings.map(({ first, second, count }) => (
          <li key={[...first, ...second].join()}>
            {tn(
              count,
              'Lay a half-square triangle of {first} on one of {second}, right sides together. Sew on both sides of the other diagonal, then cut along it. That makes two hourglasses, one the flip of the other.',
              '{n} times: lay a half-square triangle of {first} on one of {second}, right sides together. Sew on both sides of the other diagonal, then cut along it. Each time that makes two hourglasses, one the flip of the other.',
              { first: pair(first), second: pair(second) },
            )}
          </li>
        ))}
      </ol>
    </details>
  )
}
