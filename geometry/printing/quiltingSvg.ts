/**
 * A quilting plan as an SVG picture to scale, to print or trace: one path for each route and fill, the starts of routes numbered.
 *
 * In      routes and fills in cells, the block's size in cells and a cell's side.
 * Out     text; width and height in the measure's unit, drawn in the same unit.
 * Exact   places to a ten-thousandth of the unit.
 */
import type { StitchPoint, StitchedLine } from '../quilting/stitchedLines.ts'
import { escapeXml } from './escapeXml.ts'

interface QuiltingPicture {
  readonly title: string
  readonly unit: 'in' | 'cm'
  /** A cell's side. */
  readonly cell: number
  /** Of the block, in cells. */
  readonly columns: number
  readonly rows: number
  readonly routes: readonly StitchedLine[]
  readonly fills?: readonly StitchedLine[]
}

/** Round the block, so that numbers at its edge are whole; and how lines and numbers are drawn. */
const DRAWN = {
  in: { margin: 0.5, stroke: 0.02, text: 0.2 },
  cm: { margin: 1.25, stroke: 0.05, text: 0.5 },
} as const

export function quiltingSvg({ title, unit, cell, columns, rows, routes, fills = [] }: QuiltingPicture): string {
  const { margin, stroke, text } = DRAWN[unit]
  const [width, height] = [columns * cell, rows * cell]
  const [wide, high] = [shown(width + 2 * margin), shown(height + 2 * margin)]
  const path = (kind: string) => (line: StitchedLine) => `    <path class="${kind}" d="${pathOf(line, cell)}"/>`
  const starts = routes.flatMap(({ points }, place) => (points[0] === undefined ? [] : startOf(points[0], place + 1, cell, text)))
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}${unit}" height="${high}${unit}" viewBox="${shown(-margin)} ${shown(-margin)} ${wide} ${high}">`,
    `  <title>${escapeXml(title)}</title>`,
    `  <rect class="block" width="${shown(width)}" height="${shown(height)}" fill="none" stroke="#888" stroke-width="${stroke / 2}"/>`,
    `  <g fill="none" stroke="#000" stroke-width="${stroke}" stroke-linejoin="round" stroke-linecap="round">`,
    ...routes.map(path('route')),
    ...fills.map(path('fill')),
    '  </g>',
    `  <g font-family="sans-serif" font-size="${text}" text-anchor="middle">`,
    ...starts,
    '  </g>',
    '</svg>',
    '',
  ].join('\n')
}

function pathOf({ points, closed }: StitchedLine, cell: number): string {
  const way = points.map((point, place) => `${place === 0 ? 'M' : 'L'}${at(point, cell)}`).join('')
  return closed ? `${way}Z` : way
}

function startOf(point: StitchPoint, number: number, cell: number, size: number): string[] {
  const [x, y] = at(point, cell).split(' ')
  return [
    `    <circle cx="${x}" cy="${y}" r="${shown(size * 0.7)}" fill="#fff" stroke="#000" stroke-width="${size / 10}"/>`,
    `    <text x="${x}" y="${shown(Number(y) + size * 0.35)}">${number}</text>`,
  ]
}

const at = ([x, y]: StitchPoint, cell: number): string => `${shown(x * cell)} ${shown(y * cell)}`

const shown = (length: number): string => String(Number(length.toFixed(4)))
