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
      <summary>{tn(plan.runs, 'Hourglasses together: from one pair of squares', 'Hourglasses together: from {n} pairs of squares')}</summary>
      <p className="hint">
        {t('Squares {size}; trimmed to {trimmed}.', {
          size: saySides([plan.square, plan.square], unit),
          trimmed: saySides([plan.unfinished, plan.unfinished], unit),
        })}{' '}
        {plan.runs < plan.alone && tn(plan.alone, 'Each look by itself would take one pair.', 'Each look by itself would take {n} pairs.')}{' '}
        {plan.proved ? t('No fewer will do.') : t('The fewest found.')}{' '}
        {tn(
          plan.singles,
          'Single triangles take one square, and are sewn along the bias.',
          'Single triangles take {n} squares, and are sewn along the bias.',
        )}
      </p>
      <ol className="moves">
        {plan.pairs.map(({ fabrics, count }) => (
          <li key={fabrics.join()}>
            {tn(count, 'Sew one pair of squares into two triangles: {pair}.', 'Sew {n} pairs of squares into two triangles each: {pair}.', {
              pair: pair(fabrics),
            })}
          </li>
        ))}
        {plan.layings.map(({ first, second, count }) => (
          <li key={[...first, ...second].join()}>
            {tn(
              count,
              'Lay a triangle of {first} on one of {second}, right sides together; sew both sides of the other diagonal and cut on it: two hourglasses, one the mirror image of the other.',
              '{n} times: lay a triangle of {first} on one of {second}, right sides together; sew both sides of the other diagonal and cut on it: two hourglasses each time, one the mirror image of the other.',
              { first: pair(first), second: pair(second) },
            )}
          </li>
        ))}
      </ol>
    </details>
  )
}
