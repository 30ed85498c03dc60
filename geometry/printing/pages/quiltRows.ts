/**
 * Pictures of a quilting line on a page: one as wide as the page; of a line in parts, each part beside the place where it lies, two to a page.
 *
 * In      the drawings of the step, the width and the height for one picture, in points.
 * Out     rows with the scale of each picture.
 */
import type { Drawing } from '../../writing/booklet/values.ts'

export interface Shown {
  readonly drawing: Drawing
  readonly width: number
  readonly height: number
  readonly scale: number
}

export interface Row {
  readonly pictures: readonly Shown[]
  readonly height: number
}

/** Width of the small picture that shows where a part lies. */
const PLACE = 92
const ASIDE = 16
/** Height of a part's picture: two stand on a page of Letter. */
const PART = 300
/** Points for one unit of measure, at most. */
const LARGEST = 46

export function quiltRows(drawings: readonly Drawing[], width: number, most: number): Row[] {
  if (drawings.length === 1) return drawings.map((drawing) => row([shown(drawing, width, most)]))
  return Array.from({ length: Math.ceil(drawings.length / 2) }, (_, at): Row => {
    const [place, part] = drawings.slice(2 * at, 2 * at + 2) as [Drawing, Drawing?]
    if (part === undefined) return row([shown(place, width, PART)])
    return row([shown(place, PLACE, PART), shown(part, width - PLACE - ASIDE, PART)])
  })
}

function shown(drawing: Drawing, width: number, height: number): Shown {
  const scale = Math.min(LARGEST, width / drawing.width, height / drawing.height)
  return { drawing, scale, width: drawing.width * scale, height: drawing.height * scale }
}

const row = (pictures: readonly Shown[]): Row => ({ pictures, height: Math.max(...pictures.map(({ height }) => height)) })
