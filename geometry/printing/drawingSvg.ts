/**
 * A picture as SVG text, to scale: its width and height are said in the measure's unit, so that it prints at its own size.
 *
 * In      a drawing, the measure, and how cloth is shown.
 * Out     text. Places to a thousandth of a point.
 */
import type { Fabric, MeasureUnit } from '../values/block.ts'
import type { Drawing, Spot } from '../writing/booklet/values.ts'
import { escapeXml } from './escapeXml.ts'
import { fabricFills, type FabricStyle } from './fabricFill.ts'
import { drawPicture } from './drawPicture.ts'
import { POINTS } from './paper.ts'
import type { Pen, Surface, PenPath, TextLabel } from './pen.ts'

interface SvgOptions {
  readonly unit: MeasureUnit
  readonly fabrics: readonly Fabric[]
  readonly fabricStyle?: FabricStyle
  /** Times the usual weight of lines and letters. */
  readonly weight?: number
}

/** Round a drawing, so that its outermost lines and marks are whole. */
const ROUND = 9

export function drawingSvg(drawing: Drawing, { unit, fabrics, fabricStyle = 'cloth', weight = 1 }: SvgOptions): string {
  const scale = POINTS[unit]
  const [width, height] = [drawing.width * scale + 2 * ROUND, drawing.height * scale + 2 * ROUND]
  const parts: string[] = []
  drawPicture(svgSurface(parts), drawing, { at: [ROUND, ROUND], scale, fabricFill: fabricFills(fabrics, fabricStyle), weight })
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${shown(width / scale)}${unit}" height="${shown(height / scale)}${unit}" viewBox="0 0 ${shown(width)} ${shown(height)}" role="img">`,
    `<title>${escapeXml(drawing.title)}</title>`,
    ...parts,
    '</svg>',
    '',
  ].join('\n')
}

function svgSurface(parts: string[]): Surface {
  let clips = 0
  return {
    path: (path, { fill, line }) => {
      const stroke =
        line === undefined ? '' : ` stroke="${line.colour}" stroke-width="${shown(line.width)}" stroke-linejoin="round"${dashes(line.dash)}`
      parts.push(`<path d="${pathText(path)}" fill="${fill ?? 'none'}"${stroke}/>`)
    },
    within: (path, inside) => {
      clips += 1
      const id = `within-${clips}`
      parts.push(`<clipPath id="${id}"><path d="${pathText(path)}"/></clipPath><g clip-path="url(#${id})">`)
      inside()
      parts.push('</g>')
    },
    words: (words) => parts.push(wordsText(words)),
    width: ({ text, size }) => text.length * size * LETTER,
  }
}

/** A letter is about so wide for its size. */
const LETTER = 0.56

const ANCHORS = { left: 'start', middle: 'middle', right: 'end' } as const

/** A ground under words is a broad line round their letters: only the reader's program knows how wide they are. */
function wordsText({ text, at: [x, y], size, align, face, colour, ground }: TextLabel): string {
  const halo = ground === undefined ? '' : ` stroke="${ground}" stroke-width="${shown(size / 3)}" stroke-linejoin="round" paint-order="stroke"`
  const weight = face === 'strong' ? ' font-weight="600"' : ''
  return `<text x="${shown(x)}" y="${shown(y + size * 0.36)}" font-family="Inter, sans-serif" font-size="${shown(size)}"${weight} text-anchor="${ANCHORS[align]}" fill="${colour}"${halo}>${escapeXml(text)}</text>`
}

function pathText(path: PenPath): string {
  const steps: string[] = []
  const step = (letter: string, ...[x, y]: Spot): void => {
    steps.push(`${letter}${shown(x)} ${shown(y)}`)
  }
  const pen: Pen = { moveTo: (x, y) => step('M', x, y), lineTo: (x, y) => step('L', x, y), close: () => steps.push('Z') }
  path(pen)
  return steps.join('')
}

const dashes = (dash: readonly number[] | undefined): string => (dash === undefined ? '' : ` stroke-dasharray="${dash.map(shown).join(' ')}"`)

const shown = (length: number): string => String(Number(length.toFixed(3)))
