/** Laws of the booklet: nothing is forgotten, nothing is said twice, and the numbers agree with the report. */
import { describe, expect, it } from 'vitest'
import { type Block, type Booklet, type BookletStep, bookletOf, type Drawing, report, stepsText, wordsOf } from '../../geometry/index.ts'
import { BLOCKS } from './blocks.ts'
import { withGap } from './star.ts'

const booklet = (block: Block): Booklet => bookletOf(report(block), block)
const stepsOf = ({ parts }: Booklet): BookletStep[] => parts.flatMap(({ steps }) => [...steps])

describe.each(Object.entries(BLOCKS))('%s', (_, block) => {
  const said = report(block)
  const made = bookletOf(said, block)
  const steps = stepsOf(made)

  it('sews every join in exactly one step, no piece before it is made', () => {
    const sewn = steps.flatMap(({ joins }) => joins)
    expect([...sewn].sort()).toEqual(said.joins.map(({ id }) => id).sort())
    const at = new Map(steps.flatMap(({ joins }, place) => joins.map((join) => [join, place] as const)))
    for (const { id, sides } of said.joins) {
      for (const side of sides) if (at.has(side)) expect(at.get(side), `${id} uses ${side}`).toBeLessThanOrEqual(at.get(id) as number)
    }
  })

  it('cuts every row of the cut list in exactly one step, with its number and fabric', () => {
    const cut = steps.flatMap((step) => step.cut.map((place) => ({ step, row: said.cut[place] })))
    expect(cut.map(({ row }) => row)).toHaveLength(said.cut.length)
    expect(new Set(cut.map(({ row }) => row)).size).toBe(said.cut.length)
    for (const { step, row } of cut) {
      expect(step.title).toContain(block.fabrics.find(({ id }) => id === row?.fabric)?.name)
      expect(step.sentences.some((sentence) => new RegExp(`\\b${row?.count} (square|rectangle|with template)`).test(sentence))).toBe(true)
    }
  })

  it('makes as many units as the block has, and as many alike pieces as the report counts', () => {
    for (const step of steps.filter(({ units }) => units.length > 0)) expect(step.count).toBe(step.units.length)
    const alike = steps.filter(({ count, units, joins }) => count > 1 && units.length === 0 && joins.length > 0)
    for (const { count, joins } of alike) {
      expect(joins.length % count).toBe(0)
      expect(said.repeats.some((pieces) => pieces.filter((join) => joins.includes(join)).length >= count)).toBe(true)
    }
  })

  it('says nothing in a number that a maker would not', () => {
    const sentences = [
      ...steps.flatMap(({ title, sentences: all, cautions }) => [title, ...all, ...cautions]),
      ...made.seamAdvice,
      ...made.allowanceTest.sentences,
    ]
    for (const sentence of sentences) {
      expect(sentence).not.toMatch(/\b1 (squares|rectangles|patches|points|seams|pairs|strips|units|pieces|geese|hourglasses|triangles)\b/)
      expect(sentence).not.toMatch(/\bone (squares|strips|units|geese|batches|pairs|alikes)\b/)
      expect(sentence).not.toMatch(/\b(?:[2-9]|two|three|four) (square|rectangle|patch|point|seam|pair|unit|goose|strip|batch)\b(?! unit)/)
      expect(sentence).not.toMatch(/undefined|NaN|null|\bj:|\bp:|\d\.\d{4,}|\s{2,}|\.\.|,\./)
      expect(sentence, 'a sentence ends').toMatch(/[.?]$|^[A-Z][^.]*$/)
    }
  })

  it('gives every step a key of its own', () => {
    const keys = steps.map(({ key }) => key)
    expect(new Set(keys).size).toBe(keys.length)
  })

  it('draws every mark inside its picture, and says what it shows', () => {
    for (const drawing of [made.front, ...steps.flatMap(({ drawings }) => drawings), ...made.templates.map(({ drawing: one }) => one)]) {
      expect(drawing.title).toMatch(/\.$/)
      for (const [x, y] of spotsOf(drawing)) {
        expect(x).toBeGreaterThanOrEqual(0)
        expect(y).toBeGreaterThanOrEqual(0)
        expect(x).toBeLessThanOrEqual(drawing.width + 1e-6)
        expect(y).toBeLessThanOrEqual(drawing.height + 1e-6)
      }
    }
  })

  it('shows a picture with every step', () => {
    for (const step of steps) expect(step.drawings.length, step.title).toBeGreaterThan(0)
  })

  it('still reads as its reviewed text does', async () => {
    const name = block.name.toLowerCase().replaceAll(/[^a-z]+/g, '-')
    await expect(stepsText(made)).toMatchFileSnapshot(`../blocks/${name}/steps.txt`)
  })
})

function spotsOf({ marks }: Drawing): (readonly [number, number])[] {
  return marks.flatMap((mark) => {
    if (mark.type === 'area') return [...mark.outline]
    if ('points' in mark) return [...mark.points]
    return mark.type === 'arrow' ? [mark.from, mark.to] : [mark.at]
  })
}

describe('a block that cannot be sewn', () => {
  const made = booklet(withGap(BLOCKS.star))

  it('says so first, and still says what to cut', () => {
    expect(made.problems[0]).toMatch(/can’t be sewn yet/)
    expect(made.problems[1]).toMatch(/^Column \d+, row \d+: This space is empty/)
    expect(made.parts[0]?.key).toBe('cut')
    expect(made.parts.some(({ key }) => key === 'join')).toBe(false)
  })
})

describe("a maker's own words", () => {
  const key = stepsOf(booklet(BLOCKS.star)).find(({ title }) => title.startsWith('Join the rows'))?.key as string

  it('stand instead of the program’s, with a note', () => {
    const own: Block = {
      ...BLOCKS.star,
      booklet: { title: 'Star for the first class', by: 'A maker', steps: { [key]: { words: 'Join it.\n\nSlowly.', note: 'Ask me.' } } },
    }
    const made = booklet(own)
    const step = stepsOf(made).find((one) => one.key === key) as BookletStep
    expect([made.title, made.by]).toEqual(['Star for the first class', 'A maker'])
    expect(wordsOf(step)).toEqual(['Join it.', 'Slowly.'])
    expect(step.note).toBe('Ask me.')
    expect(stepsText(made)).toContain('Slowly.')
  })
})

describe('squares in pairs', () => {
  const wordsFor = (units: Block['units']): string => {
    const block: Block = { ...BLOCKS.star, units, grid: { columns: units.length, rows: 1, cell: 3 } }
    return stepsOf(booklet(block))
      .filter((step) => step.units.length > 0)
      .flatMap(({ sentences }) => sentences)
      .join(' ')
  }
  const [dark, light] = BLOCKS.star.fabrics.map(({ id }) => id) as [string, string]
  const hst = (at: number, lower = light): Block['units'][number] => ({
    id: `h${at}`,
    kind: 'hst',
    at: [at, 0],
    size: [1, 1],
    fabrics: { upper: dark, lower },
    method: 'hst-2',
  })
  const hourglass: Block['units'][number] = {
    id: 'q',
    kind: 'hourglass',
    at: [0, 0],
    size: [1, 1],
    fabrics: { top: dark, right: light, bottom: dark, left: light },
    method: 'qst-2',
  }

  it('two from a pair, and what is over [S37]', () => {
    expect(wordsFor([hst(0)])).toMatch(/the .+ square\. Put .* They make 2 units\. 1 is spare\. Sew.*Trim it to/)
    expect(wordsFor([hst(0), hst(1), hst(2)])).toMatch(/the .+ squares\. Make 2 pairs: .* All pairs make 4 units\. 1 is spare\. Sew.*Trim each to/)
  })

  it('of one fabric are drawn on once', () => {
    expect(wordsFor([hst(0, dark), hst(1, dark)])).toContain('on the wrong side of one square.')
  })

  it('give hourglasses of both hands: one is kept', () => {
    expect(wordsFor([hourglass])).toContain('You get 2 hourglasses: one is the other one flipped. Keep the one that the layout shows.')
  })
})
