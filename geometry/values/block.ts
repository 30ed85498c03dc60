/**
 * The values of a block file: what a maker's document holds, exactly as it is written.
 *
 * The document in memory is the file's own JSON, read and found good: unknown fields stay where they are, and writing it back is
 * `JSON.stringify`. Positions are in cells, lengths in the measure's unit. Everything else is derived.
 */

/** What lengths are given in: inches or centimetres. */
export type MeasureUnit = 'in' | 'cm'
/** Width and height in the measure's unit. */
export type Size = readonly [width: number, height: number]

/** Cells; a JSON number, or text such as `"1/3"`. */
export type Position = number | string
/** x, y in cells: origin top left, x to the right, y down. */
export type FilePoint = readonly [Position, Position]
/** A length in the measure's unit; a number, or text such as `"2 1/2"`. */
export type Length = number | string

export const KINDS = ['square', 'hst', 'hourglass', 'goose', 'diamond', 'cornered', 'strips', 'half-rectangle', 'polygon'] as const
export type Kind = (typeof KINDS)[number]
export const METHODS = ['plain', 'hst-2', 'hst-4', 'hst-8', 'qst-2', 'geese-4', 'corner-flip', 'strip-set'] as const
export type Method = (typeof METHODS)[number]
export const ORDERS = ['auto', 'rows', 'columns', 'sections'] as const
export type Order = (typeof ORDERS)[number]
/** A print with a top may not be turned at all, one that looks alike upside down may be turned half round, not a quarter. */
export const DIRECTIONS = ['one-way', 'two-way'] as const
export type Direction = (typeof DIRECTIONS)[number]
/** Quarter turns clockwise. */
export type Turn = 0 | 1 | 2 | 3

/** What a patch is filled with once the seams are quilted: nothing, lines that echo its outline, or a spiral. */
export const FILLS = ['none', 'echo', 'spiral'] as const
export type Fill = (typeof FILLS)[number]
export const QUILTING_STARTS = ['centre', 'topLeft', 'topRight', 'bottomRight', 'bottomLeft'] as const
export type QuiltingStart = (typeof QUILTING_STARTS)[number]

export const PRINTS = ['dots', 'stripes', 'checks', 'sprigs', 'photo'] as const
export type PrintKind = (typeof PRINTS)[number]

/** What is drawn on a fabric's colour, the same again and again. */
export interface Print {
  readonly kind: PrintKind
  /** The colour of what is drawn, `#rrggbb`; a photograph has its own. */
  readonly second?: string
  /** How wide one repeat is, or how wide a stretch of cloth the photograph shows. */
  readonly repeat: Length
  /** `photo` only: `data:image/jpeg;base64,…` */
  readonly photo?: string
}

export interface Fabric {
  readonly id: string
  readonly name: string
  /** `#rrggbb`; of a photographed fabric its mean. */
  readonly colour: string
  /** Where the print may not be turned: it runs along the length of the cloth. */
  readonly direction?: Direction
  readonly print?: Print
}

interface UnitBase {
  readonly id: string
  /** What the maker calls it; without one it is named by its kind and place. */
  readonly name?: string
  /** Patch name → fabric id. */
  readonly fabrics: Readonly<Record<string, string>>
  readonly method?: Method
  /** Cut so much larger, trimmed to size once sewn: for units whose method trims them. */
  readonly oversize?: Length
  /** The maker lifts the method's pressing rule. */
  readonly pressFree?: boolean
  /** The unit's own seams are pressed open. */
  readonly open?: boolean
  /** What fills its patches, where not what the block says. */
  readonly quilting?: Fill
}

/** How a block is quilted. Read it with `quiltingOf`: files may hold what this version doesn't know. */
export interface QuiltingPlan {
  /** Where the line along the seams starts; without one wherever is easiest. */
  readonly begin?: QuiltingStart
  readonly fill?: Fill
  /** From one line of a fill to the next. */
  readonly spacing?: Length
}

/** A unit that stands in a box of cells. `at` and `size` are after turning; `mirror` (left for right) comes before the turn. */
export interface BoxUnit extends UnitBase {
  readonly kind: Exclude<Kind, 'polygon'>
  readonly at: FilePoint
  readonly size: FilePoint
  readonly turn?: Turn
  readonly mirror?: boolean
  /** `cornered` only: the leg of the clipped corners, in cells. */
  readonly corner?: Position
}

export interface PolygonUnit extends UnitBase {
  readonly kind: 'polygon'
  readonly corners: readonly FilePoint[]
}

export type Unit = BoxUnit | PolygonUnit

export interface Border {
  readonly finishedWidth: Length
  readonly fabric: string
  /** The fabric of squares in its four corners; without one top and bottom run through. */
  readonly corner?: string
}

export interface PressRequest {
  readonly at: FilePoint
  readonly toward: FilePoint | 'open'
}

/** The maker's own words on one step of the booklet. */
export interface StepWords {
  /** Said instead of the program's. */
  readonly words?: string
  /** The program's words that they replaced: where those have changed since, hers are stale. */
  readonly of?: string
  readonly note?: string
  /** `data:image/jpeg;base64,…` or `data:image/png;base64,…` */
  readonly photograph?: string
}

export interface BookletWords {
  readonly title?: string
  /** The maker's name. */
  readonly by?: string
  readonly introduction?: string
  /** How many blocks the booklet makes: 1 where it doesn't say. */
  readonly blocks?: number
  /** By the key of the step. */
  readonly steps?: Readonly<Record<string, StepWords>>
}

export interface Block {
  readonly format: 'nestwright.block'
  readonly version: 1
  readonly name: string
  readonly measure: { readonly unit: MeasureUnit; readonly seam?: Length; readonly round?: Length }
  readonly grid: { readonly columns: number; readonly rows: number; readonly cell: Length }
  readonly fabrics: readonly Fabric[]
  readonly units: readonly Unit[]
  readonly order?: Order
  readonly borders?: readonly Border[]
  readonly press?: readonly PressRequest[]
  /** Units that are alike are pressed alike. */
  readonly pressAlike?: boolean
  readonly cloth?: { readonly usableWidth?: Length }
  readonly booklet?: BookletWords
  readonly quilting?: QuiltingPlan
}

/** A value that may be changed in place: what an edit is given. */
export type Mutable<T> = T extends readonly (infer Item)[]
  ? T extends readonly [unknown, unknown]
    ? { -readonly [K in keyof T]: Mutable<T[K]> }
    : Mutable<Item>[]
  : T extends object
    ? { -readonly [K in keyof T]: Mutable<T[K]> }
    : T
