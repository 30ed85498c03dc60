/**
 * How the pages look: sizes of type, colours of ink.
 *
 * Colours carry no meaning by themselves, so that a booklet printed in black says the same.
 */
export const INK = {
  ink: '#241c18',
  soft: '#665950',
  line: '#cfc2b3',
  wash: '#f7f1e8',
  accent: '#8f3a1f',
  trouble: '#a31f2e',
  white: '#ffffff',
} as const

export type Face = 'text' | 'strong'

export interface Style {
  readonly face: Face
  readonly size: number
  /** From one line's foot to the next. */
  readonly lead: number
  readonly colour: string
}

const style = (face: Face, size: number, lead: number, colour: string = INK.ink): Style => ({ face, size, lead, colour })

export const STYLES = {
  cover: style('strong', 30, 35),
  title: style('strong', 18, 23),
  heading: style('strong', 12, 16),
  body: style('text', 10, 13),
  strong: style('strong', 10, 13),
  lead: style('text', 11, 16, INK.soft),
  small: style('text', 10, 13, INK.soft),
  chart: style('text', 10, 12.5),
  label: style('strong', 10, 13, INK.soft),
} as const
