/** The strips of one fabric to scale, their cuts numbered in the order in which they are made; in the sheet, or large. */
import { useEffect, useRef, useState } from 'react'
import { createPortal } from 'react-dom'
import { type CutPicture, cutPicture, type FabricRow, type PictureCut, type PictureStrip, sayLength, type Strip } from '../../geometry/index.ts'
import { t, tn } from '../words/words.ts'
import type { MeasureUnit } from '../words/sizes.ts'

interface Props {
  readonly cloth: FabricRow
  readonly name: string
  readonly colour: string
  readonly width: number
  readonly unit: MeasureUnit
}

export function CuttingPicture({ cloth, name, colour, width, unit }: Props) {
  const [large, setLarge] = useState(false)
  return (
    <details className="order">
      <summary>{tn(cloth.strips.length, 'How to cut it: one strip', 'How to cut it: {n} strips')}</summary>
      <StripsPicture strips={cloth.strips} name={name} colour={colour} width={width} unit={unit} across={300} />
      <Keyed strips={cloth.strips} unit={unit} />
      <p className="hint">
        {cloth.proved
          ? t('{length} of cloth; no way of cutting strips needs less.', { length: `${sayLength(cloth.length, unit)} ${unit}` })
          : t('{length} of cloth: the least found, and no less than {least}.', {
              length: `${sayLength(cloth.length, unit)} ${unit}`,
              least: `${sayLength(cloth.atLeast ?? 0, unit)} ${unit}`,
            })}{' '}
        {t('Make the cuts in the order of their numbers: the strip first, then across it from the left, then trim what is lower.')}
      </p>
      <div className="buttons">
        <button type="button" aria-haspopup="dialog" onClick={() => setLarge(true)}>
          {t('Show it large')}
        </button>
      </div>
      {large && <Large cloth={cloth} name={name} colour={colour} width={width} unit={unit} close={() => setLarge(false)} />}
    </details>
  )
}

function Large({ cloth, name, colour, width, unit, close }: Props & { readonly close: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => dialog.current?.showModal(), [])
  return createPortal(
    <dialog ref={dialog} className="large" aria-labelledby="large-title" onClose={close}>
      <div className="titled">
        <h2 id="large-title">{t('Cutting {name}', { name })}</h2>
        <button type="button" onClick={() => window.print()}>
          {t('Print')}
        </button>
        <button type="button" onClick={() => dialog.current?.close()}>
          {t('Close')}
        </button>
      </div>
      <StripsPicture strips={cloth.strips} name={name} colour={colour} width={width} unit={unit} across={900} />
      <Keyed strips={cloth.strips} unit={unit} />
    </dialog>,
    document.body,
  )
}

const sizesOf = (strips: readonly Strip[]): Map<string, string> => {
  const keys = [...new Set(strips.flatMap(({ pieces }) => pieces.map(({ size }) => size.join())))]
  return new Map(keys.map((key, index) => [key, letters(index)]))
}

/** A … Z, then AA, AB, … */
const letters = (index: number): string => (index < 26 ? '' : letters(Math.floor(index / 26) - 1)) + String.fromCharCode(65 + (index % 26))

function Keyed({ strips, unit }: { readonly strips: readonly Strip[]; readonly unit: MeasureUnit }) {
  const sizes = new Map(strips.flatMap(({ pieces }) => pieces.map(({ size }) => [size.join(), size] as const)))
  return (
    <ul className="moves">
      {[...sizesOf(strips)].map(([key, letter]) => {
        const [w, h] = sizes.get(key) as readonly [number, number]
        return (
          <li key={key}>
            {letter}: {sayLength(w, unit)} × {sayLength(h, unit)} {unit}
          </li>
        )
      })}
    </ul>
  )
}

/** Pixels between strips, where the numbers of the cuts across stand; and at the left, where those of the strips do. */
const GUTTER = 17
const MARGIN = 22
/** What a number takes. */
const DIGIT = 6

interface DrawnProps {
  readonly strips: readonly Strip[]
  readonly name: string
  readonly colour: string
  readonly width: number
  readonly unit: MeasureUnit
  /** Pixels. */
  readonly across: number
}

export function StripsPicture({ strips, name, colour, width, unit, across }: DrawnProps) {
  const picture: CutPicture = cutPicture(strips, width)
  const scale = (across - MARGIN) / picture.width
  const keys = sizesOf(strips)
  const high = picture.height * scale + GUTTER * picture.strips.length
  return (
    <svg className="cutting" viewBox={`0 0 ${across} ${high + 4}`} role="img" aria-label={wordsOf(strips, name, unit)}>
      {picture.strips.map((strip, index) => (
        <DrawnStrip key={strip.number} strip={strip} down={GUTTER * (index + 1)} scale={scale} keys={keys} colour={colour} />
      ))}
    </svg>
  )
}

interface StripProps {
  readonly strip: PictureStrip
  readonly down: number
  readonly scale: number
  readonly keys: ReadonlyMap<string, string>
  readonly colour: string
}

function DrawnStrip({ strip, down, scale, keys, colour }: StripProps) {
  const place = (x: number, y: number): readonly [number, number] => [MARGIN + x * scale, down + y * scale]
  const [left, top] = place(strip.x, strip.y)
  const [wide, high] = [strip.width * scale, strip.height * scale]
  return (
    <g>
      <rect x={left} y={top} width={wide} height={high} fill="#fffaf2" stroke="#8a7a6d" strokeWidth={0.6} />
      {strip.pieces.map(({ number, x, y, width, height, size }) => (
        <PieceDrawn key={number} at={place(x, y)} size={[width * scale, height * scale]} letter={keys.get(size.join()) ?? ''} colour={colour} />
      ))}
      {strip.leftover.map((box) => {
        const [x, y] = place(box.x, box.y)
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
        <CutDrawn key={cut.number} cut={cut} place={place} />
      ))}
      {numbered(strip.cuts, place).map(({ x, y, text }) => (
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

function PieceDrawn({ at: [x, y], size: [wide, high], letter, colour }: PieceProps) {
  const large = Math.min(12, wide * 0.9, high * 0.9)
  return (
    <g>
      <rect x={x} y={y} width={wide} height={high} fill={colour} fillOpacity={0.75} />
      {large > 4 && (
        <>
          <circle cx={x + wide / 2} cy={y + high / 2} r={large * 0.62} fill="#fffaf2" />
          <text x={x + wide / 2} y={y + high / 2 + 0.5} fontSize={large * 0.85} textAnchor="middle" dominantBaseline="central" fill="#2b2320">
            {letter}
          </text>
        </>
      )}
    </g>
  )
}

type Place = (x: number, y: number) => readonly [number, number]

function CutDrawn({ cut: { from, to, kind }, place }: { readonly cut: PictureCut; readonly place: Place }) {
  const [x1, y1] = place(...from)
  const [x2, y2] = place(...to)
  return <line x1={x1} y1={y1} x2={x2} y2={y2} stroke="#8f3a1f" strokeWidth={kind === 'strip' ? 1.8 : 1} />
}

/** Numbers beside their cuts; where two would lie on each other, the later one is left out: they count on. */
function numbered(cuts: readonly PictureCut[], place: Place): { x: number; y: number; text: string }[] {
  const shown: { x: number; y: number; text: string }[] = []
  for (const { number, from, to, kind } of cuts) {
    const text = String(number)
    const [ax, ay] = place(...from)
    const [bx] = place(...to)
    const at = kind === 'strip' ? { x: MARGIN - 11, y: ay } : kind === 'across' ? { x: ax, y: ay - 4 } : { x: (ax + bx) / 2, y: ay + 10 }
    const free = shown.every(({ x, y, text: other }) => Math.abs(y - at.y) > 9 || Math.abs(x - at.x) > (DIGIT * (text.length + other.length)) / 2 + 3)
    if (free) shown.push({ ...at, text })
  }
  return shown
}

function wordsOf(strips: readonly Strip[], name: string, unit: MeasureUnit): string {
  const said = strips.map(({ height, pieces }) =>
    t('a strip {height} high, cut into {pieces}', {
      height: sayLength(height, unit),
      pieces: pieces.map(({ size: [w, h], count }) => t('{count} of {w} by {h}', { count, w: sayLength(w, unit), h: sayLength(h, unit) })).join(', '),
    }),
  )
  return `${name}: ${said.join('; ')}`
}
