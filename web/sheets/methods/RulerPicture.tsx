/** The ruler on a unit that is being trimmed: its two cutting edges are heavy, and the unit's seams and points lie under it. */
import type { RulerCut } from '../../../geometry/index.ts'
import { saySides } from '../../words/sizes.ts'
import { t } from '../../words/words.ts'

export function RulerPicture({ cut: { edges, size, points, seams }, unit }: { readonly cut: RulerCut; readonly unit: 'in' | 'cm' }) {
  const [width, height] = size
  const right = edges[0] === 'right'
  const x = (fromSide: number): number => (right ? width - fromSide : fromSide)
  const stroke = Math.max(width, height) / 90
  const label = t('The ruler: cut along its {edge} and top edges; {size} stays under it.', {
    edge: right ? t('right') : t('left'),
    size: saySides(size, unit),
  })
  return (
    <svg viewBox={`${-4 * stroke} ${-4 * stroke} ${width + 8 * stroke} ${height + 8 * stroke}`} role="img" aria-label={label}>
      <rect width={width} height={height} fill="#fffaf2" stroke="#8a7a6d" strokeWidth={stroke} strokeDasharray={`${3 * stroke} ${2 * stroke}`} />
      {seams.map(({ ends: [from, to] }) => (
        <line
          key={`${from.fromSide} ${from.fromTop} ${to.fromSide} ${to.fromTop}`}
          x1={x(from.fromSide)}
          y1={from.fromTop}
          x2={x(to.fromSide)}
          y2={to.fromTop}
          stroke="#2b2320"
          strokeWidth={stroke}
        />
      ))}
      {points.map(({ type, at }) => (
        <circle key={`${type} ${at.fromSide} ${at.fromTop}`} cx={x(at.fromSide)} cy={at.fromTop} r={2.4 * stroke} fill="#2a6f66" />
      ))}
      <path
        d={right ? `M0 0H${width}V${height}` : `M${width} 0H0V${height}`}
        fill="none"
        stroke="#8f3a1f"
        strokeWidth={2.6 * stroke}
        strokeLinecap="square"
      />
    </svg>
  )
}
