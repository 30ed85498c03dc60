/**
 * A pen that writes down what is drawn, in cells: so that a view can be read and compared as text.
 *
 * In      the frame a view is painted in.
 * Out     one line for each fill, line, circle, mark and word, numbers rounded to thousandths; the same strokes over each other (a pale one under a dark
 *         one) each have their line. Many parts of one colour are summed up by their number and area.
 * The screen's own paths are stood in for, so it must be imported before what paints.
 */
import { MARKS } from '../../../web/drawing/marks.ts'
import type { Frame } from '../../../web/board/viewport.ts'

type Matrix = readonly [number, number, number, number, number, number]
type Verb = readonly ['move' | 'line', number, number] | readonly ['close'] | readonly ['round', number, number, number]

class Path {
  readonly verbs: Verb[] = []
  readonly mark: string | undefined
  constructor(mark?: string) {
    this.mark = mark
  }
  moveTo(x: number, y: number): void {
    this.verbs.push(['move', x, y])
  }
  lineTo(x: number, y: number): void {
    this.verbs.push(['line', x, y])
  }
  closePath(): void {
    this.verbs.push(['close'])
  }
  arc(x: number, y: number, radius: number): void {
    this.verbs.push(['round', x, y, radius])
  }
  rect(x: number, y: number, width: number, height: number): void {
    this.verbs.push(['move', x, y], ['line', x + width, y], ['line', x + width, y + height], ['line', x, y + height], ['close'])
  }
}

const canvas = { getContext: () => ({}) }
Object.assign(globalThis, { Path2D: Path, document: { createElement: () => canvas }, window: { devicePixelRatio: 1 } })

interface Looks {
  fillStyle: string
  strokeStyle: string
  lineWidth: number
  globalAlpha: number
  dashed: boolean
  matrix: Matrix
}

/** Parts of one colour above which they are summed up. */
const MANY = 24

export interface Recorder {
  readonly pen: CanvasRenderingContext2D
  readonly lines: () => string
}

export function recorder(frame: Frame): Recorder {
  const said: string[] = []
  const saved: Looks[] = []
  let looks: Looks = { fillStyle: '#000000', strokeStyle: '#000000', lineWidth: 1, globalAlpha: 1, dashed: false, matrix: [1, 0, 0, 1, 0, 0] }
  let path = new Path()
  const place = (x: number, y: number): readonly [number, number] => {
    const [a, b, c, d, e, f] = looks.matrix
    return frame.toCells(a * x + c * y + e, b * x + d * y + f)
  }
  const say = (verb: string, drawn: Path, colour: string): void => {
    const alpha = looks.globalAlpha === 1 ? '' : ` at ${rounded(looks.globalAlpha)}`
    const head = `${verb} ${colour.replace(/\d+\.\d+/g, (part) => String(Math.round(Number(part))))}${alpha}`
    if (drawn.mark !== undefined) said.push(`${head} ${markName(drawn.mark)} at ${spotWords(place(0, 0))}`)
    else if (drawn.verbs.length > 0) said.push(`${head}: ${shapeWords(drawn, place)}`)
  }
  const stroke = (drawn: Path = path): void =>
    say(
      `${looks.dashed ? 'dashes' : 'line'} ${rounded(looks.lineWidth * (looks.matrix[0] === 1 ? 1 : Math.abs(looks.matrix[0])))}`,
      drawn,
      looks.strokeStyle,
    )
  const turned = ([a, b, c, d, e, f]: Matrix): void => {
    const [A, B, C, D, E, F] = looks.matrix
    looks = {
      ...looks,
      matrix: [A * a + C * b, B * a + D * b, A * c + C * d, B * c + D * d, A * e + C * f + E, B * e + D * f + F],
    }
  }
  const verbs = {
    save: () => saved.push({ ...looks }),
    restore: () => {
      looks = saved.pop() ?? looks
    },
    beginPath: () => {
      path = new Path()
    },
    moveTo: (x: number, y: number) => path.moveTo(x, y),
    lineTo: (x: number, y: number) => path.lineTo(x, y),
    closePath: () => path.closePath(),
    arc: (x: number, y: number, radius: number) => path.arc(x, y, radius),
    rect: (x: number, y: number, width: number, height: number) => path.rect(x, y, width, height),
    // Its corners are rounded on the screen; here it is told by its box.
    roundRect: (x: number, y: number, width: number, height: number) => path.rect(x, y, width, height),
    transform: (...matrix: [number, number, number, number, number, number]) => turned(matrix),
    translate: (x: number, y: number) => turned([1, 0, 0, 1, x, y]),
    scale: (x: number, y: number) => turned([x, 0, 0, y, 0, 0]),
    setLineDash: (dash: readonly number[]) => {
      looks = { ...looks, dashed: dash.length > 0 }
    },
    fill: (drawn?: Path | string) => say('fill', drawn instanceof Path ? drawn : path, looks.fillStyle),
    stroke,
    strokeRect: (x: number, y: number, width: number, height: number) => {
      const box = new Path()
      box.rect(x, y, width, height)
      stroke(box)
    },
    fillText: (text: string, x: number, y: number) => said.push(`word ${text} at ${spotWords(place(x, y))}`),
  }
  const pen = new Proxy(verbs, {
    get: (target, name) => (name in target ? target[name as keyof typeof target] : looks[name as keyof Looks]),
    set: (_, name, value) => {
      looks = { ...looks, [name]: value }
      return true
    },
  })
  return { pen: pen as unknown as CanvasRenderingContext2D, lines: () => `${said.join('\n')}\n` }
}

const markName = (path: string): string => `mark ${Object.entries(MARKS).find(([, mark]) => mark.path === path)?.[0] ?? 'unknown'}`

/** No minus before a nought. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000 + 0
const spotWords = ([x, y]: readonly [number, number]): string => `${rounded(x)} ${rounded(y)}`

/** Corners of each part; closed parts end in a point. */
function shapeWords({ verbs }: Path, place: (x: number, y: number) => readonly [number, number]): string {
  const parts: (readonly [number, number])[][] = []
  const words: string[] = []
  const end = (closed: boolean): void => {
    const corners = parts.at(-1)
    if (corners !== undefined && corners.length > 0) words.push(`${corners.map(spotWords).join(', ')}${closed ? '.' : ''}`)
    parts.push([])
  }
  for (const [verb, x = 0, y = 0, radius = 0] of verbs) {
    if (verb === 'round') words.push(`round ${spotWords(place(x, y))} of ${rounded(radius)}`)
    else if (verb === 'close') end(true)
    else {
      if (verb === 'move') end(false)
      if (parts.length === 0) parts.push([])
      parts.at(-1)?.push(place(x, y))
    }
  }
  end(false)
  return words.length > MANY
    ? `${words.length} parts, ${rounded(parts.reduce((sum, corners) => sum + area(corners), 0))} square cells`
    : words.join(' | ')
}

const area = (corners: readonly (readonly [number, number])[]): number =>
  Math.abs(
    corners.reduce((sum, [x, y], at) => {
      const [nextX, nextY] = corners[(at + 1) % corners.length] as readonly [number, number]
      return sum + (x * nextY - nextX * y) / 2
    }, 0),
  )
