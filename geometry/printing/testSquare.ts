/** A square of a known size: if it measures right with a ruler, the page was printed at its own size. */
import type { BookletPhrases } from '../words/booklet/bookletWords.ts'
import { boxAt } from '../writing/booklet/sketch.ts'
import { INK, STYLES } from './pageStyle.ts'
import { POINTS } from './paper.ts'
import { polygon } from './pen.ts'
import type { PageWriter } from './pageWriter.ts'

/** 1 in, or 2.5 cm. */
const squareSide = (unit: 'in' | 'cm'): number => (unit === 'in' ? 1 : 2.5)

/** Points from one side to the other, between the middles of its lines. */
export const testSquareSide = (unit: 'in' | 'cm'): number => squareSide(unit) * POINTS[unit]

export function testSquare(pages: PageWriter, x: number, y: number, unit: 'in' | 'cm', say: BookletPhrases['pages']): void {
  const side = testSquareSide(unit)
  const said = `${squareSide(unit)} ${unit}`
  pages.figure(say.testSquareAlt(said), (surface) => {
    surface.path(polygon(boxAt(x, y, side, side)), { line: { colour: INK.ink, width: 0.5 } })
    const marks = unit === 'in' ? 4 : 5
    for (let at = 1; at < marks; at += 1) {
      const step = (side * at) / marks
      for (const [from, to] of [
        [
          [x + step, y],
          [x + step, y + 4],
        ],
        [
          [x, y + step],
          [x + 4, y + step],
        ],
      ] as const)
        surface.path(polygon([from, to], false), { line: { colour: INK.ink, width: 0.4 } })
    }
    surface.words({ text: say.testSquare, at: [x + side / 2, y + side / 2 - 6], size: 10, align: 'middle', face: 'text', colour: INK.soft })
    surface.words({ text: said, at: [x + side / 2, y + side / 2 + 5], size: 10, align: 'middle', face: 'strong', colour: INK.ink })
  })
}

/** The words beside the test square, from a place on the page, in points. */
export const squareNote = (pages: PageWriter, x: number, y: number, width: number, say: BookletPhrases['pages']): void =>
  pages.tagged('P', () => pages.textBlock(pages.breakLines(say.printAtFullSize, STYLES.small, width), STYLES.small, x, y))
