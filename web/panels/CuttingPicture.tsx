/** The strips of one fabric to scale, their cuts numbered in the order in which they are made. */
import { cutPicture, type FabricRow, sayLength } from '../../geometry/index.ts'

interface Props {
  readonly cloth: FabricRow
  readonly name: string
  readonly colour: string
  readonly width: number
  readonly unit: 'in' | 'cm'
}

export function CuttingPicture({ cloth, name, colour, width, unit }: Props) {
  const picture = cutPicture(cloth.strips, width)
  const hair = picture.width / 300
  const letters = picture.width / 30
  const sizes = new Map(picture.strips.flatMap(({ pieces }) => pieces.map(({ size }) => [size.join(), size] as const)))
  const keys = new Map([...sizes.keys()].map((key, index) => [key, String.fromCharCode(65 + (index % 26))]))
  return (
    <details className="order">
      <summary>How to cut it: {cloth.strips.length === 1 ? 'one strip' : `${cloth.strips.length} strips`}</summary>
      <svg
        className="cutting"
        viewBox={`${-hair} ${-hair} ${picture.width + 2 * hair} ${picture.height + 2 * hair}`}
        role="img"
        aria-label={wordsOf(cloth, name, unit)}
      >
        <rect width={picture.width} height={picture.height} fill="#ffffff" />
        {picture.strips.map((strip) => (
          <g key={strip.number}>
            {strip.pieces.map(({ number, x, y, width: wide, height, size }) => (
              <g key={number}>
                <rect x={x} y={y} width={wide} height={height} fill={colour} fillOpacity={0.75} stroke="#2b2320" strokeWidth={hair / 2} />
                <circle cx={x + wide / 2} cy={y + height / 2} r={Math.min(letters * 0.75, wide / 2, height / 2)} fill="#fffaf2" />
                <text
                  x={x + wide / 2}
                  y={y + height / 2}
                  fontSize={Math.min(letters, wide, height)}
                  textAnchor="middle"
                  dominantBaseline="central"
                  fill="#2b2320"
                >
                  {keys.get(size.join())}
                </text>
              </g>
            ))}
            {strip.leftover.map((box) => (
              <rect
                key={`${box.x} ${box.y}`}
                x={box.x}
                y={box.y}
                width={box.width}
                height={box.height}
                fill="none"
                stroke="#8a7a6d"
                strokeWidth={hair / 2}
                strokeDasharray={hair * 2}
              />
            ))}
            <line x1={0} x2={picture.width} y1={strip.y + strip.height} y2={strip.y + strip.height} stroke="#8f3a1f" strokeWidth={hair} />
          </g>
        ))}
      </svg>
      <ul className="moves">
        {[...sizes].map(([key, [w, h]]) => (
          <li key={key}>
            {keys.get(key)}: {sayLength(w, unit)} × {sayLength(h, unit)} {unit}
          </li>
        ))}
      </ul>
      <p className="hint">
        {sayLength(cloth.length, unit)} {unit} of cloth; {cloth.proved ? 'no way of cutting strips needs less.' : 'the least found.'} Cut the strips
        first, then across them from the left.
      </p>
    </details>
  )
}

const wordsOf = ({ strips }: FabricRow, name: string, unit: 'in' | 'cm'): string =>
  `${name}: ${strips.map(({ height, pieces }) => `a strip ${sayLength(height, unit)} high, cut into ${pieces.map(({ size: [w, h], count }) => `${count} of ${sayLength(w, unit)} by ${sayLength(h, unit)}`).join(', ')}`).join('; ')}`
