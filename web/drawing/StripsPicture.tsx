/** The strips of one fabric to scale, with their cuts numbered in the order in which they are made. */
import {
  type MeasureUnit,
  type CuttingDiagram,
  cuttingDiagram,
  type DiagramCut,
  type DiagramStrip,
  sayLength,
  type Strip,
} from '../../geometry/index.ts'
import { t } from '../words/words.ts'

/** A letter for each size of piece, by the size as text. */
export const pieceLetters = (strips: readonly Strip[]): Map<string, string> => {
  const keys = [...new Set(strips.flatMap(({ pieces }) => pieces.map(({ size }) => size.join())))]
  return new Map(keys.map((key, index) => [key, letters(index)]))
}

/** A … Z, then AA, AB, … */
const letters = (index: number): string => (index < 26 ? '' : letters(Math.floor(index / 26) - 1)) + String.fromCharCode(65 + (index % 26))

/** Pixels above each strip, for the numbers of the cuts across it, and at the left, for the numbers of the strips. */
const GUTTER = 17
const MARGIN = 22
/** Pixels that a digit takes. */
const DIGIT = 6

interface Props {
  readonly strips: readonly Strip[]
  readonly name: string
  readonly colour: string
  readonly width: number
  readonly unit: MeasureUnit
  /** Width of the picture, in pixels. */
  readonly across: number
}

export function StripsPicture({ strips, name, colour, width, unit, across }: Props) {
  const picture: CuttingDiagram = cuttingDiagram(strips, width)
  const scale = (across - MARGIN) / picture.width
  const keys = pieceLetters(strips)
  const height = picture.height * scale + GUTTER * picture.strips.length
  return (
    <svg className="cutting" viewBox={`0 0 ${across} ${height + 4}`} role="img" aria-label={stripsLabel(strips, name, unit)}>
      {picture.strips.map((strip, index) => (
        <StripPicture key={strip.number} strip={strip} down={GUTTER * (index + 1)} scale={scale} keys={keys} colour={colour} />
      ))}
    </svg>
  )
}

interface StripProps {
  readonly strip: DiagramStrip
  readonly down: number
  readonly scale: number
  readonly keys: ReadonlyMap<string, string>
  readonly colour: string
}

function StripPicture({ strip, down, scale, keys, colour }: StripProps) {
  const toPixels = (x: number, y: number): readonly [number, number] => [MARGIN + x * scale, down + y * scale]
  const [left, top] = toPixels(strip.x, strip.y)
  const [width, height] = [strip.width * scale, strip.height * scale]
  return (
    <g>
      <rect x={left} y={top} width={width} height={height} fill="#fffaf2" stroke="#8a7a6d" strokeWidth={0.6} />
      {strip.pieces.map(({ number, x, y, width, height, size }) => (
        <PiecePicture key={number} at={toPixels(x, y)} size={[width * scale, height * scale]} letter={keys.get(size.join()) ?? ''} colour={colour} />
      ))}
      {strip.leftover.map((box) => {
        const [x, y] = toPixels(box.x, box.y)
        return (
          <rect
            key={`${box.x} ${box.y}`}
            x={x}
            y={y}
            width={box.width * scale}
            height={box.height * scale}
            fill="none"
            stroke="#8a7a6d"
            strokeWidth={0.6}
            strokeDasharray="3 2"
          />
        )
      })}
      {strip.cuts.map((cut) => (
        <CutLine key={cut.number} cut={cut} toPixels={toPixels} />
      ))}
      {cutNumbers(strip.cuts, toPixels).map(({ x, y, text }) => (
        <text key={text} x={x} y={y} fontSize={10} textAnchor="middle" className="cutnumber">
          {text}
        </text>
      ))}
    </g>
  )
}

interface PieceProps {
  readonly at: readonly [number, number]
  readonly size: readonly [number, number]
  readonly letter: string
  readonly colour: string
}

function PiecePicture({ at: [x, y], size: [width, height], letter, colour }: PieceProps) {
  const large = Math.min(12, width * 0.9, height * 0.9)
  return (
    <g>
      <rect x={x} y={y} width={width} height={height} fill={colour} fillOpacity={0.75} />
      {large > 4 && (
        <>
          <circle cx={x + width / 2} cy={y + height / 2} r={large * 0.62} fill="#fffaf2" />
          <text x={x + width / 2} y={y + height / 2 + 0.5} fontSize={large * 0.85} textAnchor="middle" dominantBaseline="central" fill="#2b2320">
            {letter}
          </text>
        </>
      )}
    </g>
  )
}

type ToPixels = (x: number, y: number) => readonly [number, number]

function CutLine({ cut: { from, to, type }, toPixels }: { readonly cut: DiagramCut; readonly toPixels: ToPixels }) {
  const [x1, y1] = toPixels(...from)
  const [x2, y2] = toPixels(...to)
  return <line x1={x1} y1={y1} x2={x2} y2={y2} stroke="#8f3a1f" strokeWidth={type === 'strip' ? 1.8 : 1} />
}

/** The numbers beside their cuts. If two would overlap, the later one is left out: the numbers go on anyway. */
function cutNumbers(cuts: readonly DiagramCut[], toPixels: ToPixels): { x: number; y: number; text: string }[] {
  const shown: { x: number; y: number; text: string }[] = []
  for (const { number, from, to, type } of cuts) {
    const text = String(number)
    const [ax, ay] = toPixels(...from)
    const [bx] = toPixels(...to)
    const at = type === 'strip' ? { x: MARGIN - 11, y: ay } : type === 'across' ? { x: ax, y: ay - 4 } : { x: (ax + bx) / 2, y: ay + 10 }
    const free = shown.every(({ x, y, text: other }) => Math.abs(y - at.y) > 9 || Math.abs(x - at.x) > (DIGIT * (text.length + other.length)) / 2 + 3)
    if (free) shown.push({ ...at, text })
  }
  return shown
}

function stripsLabel(strips: readonly Strip[], name: string, unit: MeasureUnit): string {
  const descriptions = strips.map(({ height, pieces }) =>
    t('a strip {height} wide, cut into {pieces}', {
      height: sayLength(height, unit),
      pieces: pieces.map(({ size: [w, h], count }) => t('{count} of {w} by {h}', { count, w: sayLength(w, unit), h: sayLength(h, unit) })).join(', '),
    }),
  )
  return `${name}: ${descriptions.join('; ')}`
}
