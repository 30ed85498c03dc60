/** Every message in English and in German: said with the same names and numbers, with no English left over, and printed in English. */
import { describe, expect, it } from 'vitest'
import { produce } from 'immer'
import { asSewn } from '../../geometry/edits/sewnComparison.ts'
import { turnUnits } from '../../geometry/edits/unitEdits.ts'
import { readBlock, report, settingReport, writeBlock } from '../../geometry/index.ts'
import type { Block } from '../../geometry/values/block.ts'
import { type Message, type MessageCode, type MessageParams, message } from '../../geometry/values/messages.ts'
import type { UnitPlace } from '../../geometry/values/unitPlace.ts'
import { english, inEnglish } from '../../geometry/words/english.ts'
import { germanMessages } from '../../geometry/words/german.ts'
import { printed } from '../../geometry/words/printed.ts'
import { say } from '../../geometry/words/words.ts'
import { blockOf, sequence, square, star } from '../help.ts'
import { tiling } from '../layouts.ts'

const inGerman = (message: Message): string => say(germanMessages, message)

type WithParams = { readonly [Code in MessageCode as keyof MessageParams[Code] extends never ? never : Code]: readonly MessageParams[Code][] }

const VALUES = [{ value: { text: '731' } }, { value: 'missing' }, { value: 'list' }, { value: 'object' }] as const
const one = { value: { text: '731' } } as const
const most = 40_000
const counted = [{ count: 50_000, most }]
const turned = ([0, 1, 2, 3] as const).map((quarters) => ({ quarters }))
const units = [{ units: 1 }, { units: 25 }]
const at = { unit: { type: 'row', noun: 'square', row: 77 } } as const

const PRESS_WAYS = ['left', 'right', 'up', 'down', 'open', 'proposed'] as const
const PLACES: readonly UnitPlace[] = [
  ...(['square', 'rectangle', 'hst', 'hourglass', 'goose', 'diamond', 'cornered', 'strips', 'half-rectangle', 'polygon'] as const).map(
    (noun): UnitPlace => ({ type: 'only', noun }),
  ),
  ...(['top', 'right', 'bottom', 'left', 'topLeft', 'topRight', 'bottomRight', 'bottomLeft', 'centre'] as const).map(
    (side): UnitPlace => ({ type: 'side', noun: 'goose', side }),
  ),
  { type: 'row', noun: 'square', row: 14 },
  { type: 'row', noun: 'hst', row: 14, nth: 1 },
  { type: 'row', noun: 'square', row: 31, nth: 22 },
]

const GEESE_LOOKS = [
  { count: 14, left: 'F71', right: 'F72' },
  { count: 15, left: 'F73', right: 'F73' },
] as const

const PRESS_HOWS = [
  ...(['square', 'rectangle', 'goose', 'strips', 'half-rectangle', 'polygon', 'diamond'] as const).flatMap((noun) =>
    [true, false].map((many) => ({ type: 'toward' as const, noun, many })),
  ),
  ...PRESS_WAYS.map((way) => ({ type: 'way' as const, way })),
  { type: 'ways' as const, ways: ['left', 'right', 'open', 'left'] as const },
  { type: 'as' as const, number: 41 },
  { type: 'none' as const },
]

/** Parameters of each code that has any, one for each way of saying it. */
const SAMPLES: WithParams = {
  'other-format': VALUES,
  'unknown-block': [one],
  'quilt-chapter': (['frame', 'layer', 'quilt', 'join', 'finish'] as const).map((chapter) => ({ chapter })),
  'quilt-block-chapter': [{ block: 'B71', count: 72 }],
  'quilt-frame': [{ block: 'B71', positions: [72] }],
  'quilt-layer': [{ positions: [71, 72, 73, 74, 77] }],
  'quilt-positions': [{ positions: [71, 73] }],
  'quilt-press-other': [{ positions: [71, 73] }],
  'quilt-join': [{ sides: [[71], [72]] }],
  'quilt-finish': (['sash', 'borders', 'layer', 'quilt', 'binding', 'rim', 'label', 'sleeve'] as const).map((step) => ({ step })),
  'cut-for-quilt': (['block-border', 'frame', 'plain', 'sash', 'corner', 'strip', 'border'] as const).map((part, each) => ({
    part,
    each: part === 'strip' ? 71 : Math.min(each, 1),
  })),
  'press-position': (['planned', 'opposite'] as const).map((press) => ({ column: 71, row: 72, press })),
  'press-position-seam': [{ column: 71, row: 72 }],
  'turn-position': turned.map(({ quarters }) => ({ column: 71, row: 72, quarters })),
  'unknown-place': [one],
  'length-below-zero': [one],
  'not-whole-cells': [0, 1].map((least) => ({ ...one, least })),
  'in-block': [{ block: 'B41', says: message('cloth-missing') }],
  'fronts-proved': [1, 41].map((clashes) => ({ clashes, atLeast: clashes })),
  'fronts-searched': [1, 42].map((clashes) => ({ clashes, atLeast: 0 })),
  'set-strip-count': [{ strips: 29 }],
  'newer-version': [{ version: 29 }],
  'other-version': VALUES,
  'not-object': VALUES,
  'not-list': VALUES,
  'not-one-of': VALUES.map((value) => ({ ...value, known: ['k41', 'k42'] })),
  'not-flag': VALUES,
  'too-deep': [{ most }],
  'not-length': VALUES,
  'length-not-above-zero': [one],
  'length-beyond-rulers': [one],
  'not-measure': VALUES,
  'not-cell-count': [{ ...one, most }],
  'not-block-count': [{ ...one, most }],
  'not-id': VALUES,
  'id-taken': [one],
  'not-name': VALUES,
  'name-too-long': counted,
  'not-text': VALUES,
  'text-too-long': counted,
  'not-colour': VALUES,
  'not-print-colour': VALUES,
  'not-print-photo': [{ ...one, most }],
  'not-photograph': VALUES,
  'photograph-size': [{ width: 30_000, height: 30_000, most: 25_000_000 }],
  'unknown-fabric': VALUES,
  'not-position': VALUES,
  'position-too-far': [{ ...one, most }],
  'position-not-exact': [one],
  'not-pair': VALUES,
  'list-too-long': counted,
  'too-many-values': [{ most: 3_000_000 }],
  'too-many-units': counted,
  'method-of-another-kind': [{ ...one, kind: 'hst', known: ['k41', 'k42'] }],
  'too-many-patches': counted,
  'strips-with-hole': [one],
  'unknown-patch': [{ ...one, kind: 'hst', known: ['k41', 'k42'] }],
  'patch-without-fabric': [{ patch: 'p33' }],
  'size-not-above-zero': [one],
  'not-turn': VALUES,
  'not-square': [{ ...one, kind: 'hst' }],
  'not-goose': [one],
  'corner-not-above-zero': [one],
  'corners-overlap': [one],
  'corners-leave-no-centre': [one],
  'too-few-corners': [{ count: 2 }],
  'too-many-corners': counted,
  'other-blocks-format': [{ format: 'f55' }],
  unit: PLACES.flatMap((place) => [{ place }, { place, dative: true as const }]),
  'unit-label': PLACES.map((place) => ({ place })),
  'step-make-units': [
    { count: 1, kind: 'goose', hand: null, labels: ['A'] },
    { count: 14, kind: 'half-rectangle', hand: 'left', labels: ['B1', 'B2'] },
    { count: 14, kind: 'half-rectangle', hand: 'right', labels: ['C'] },
  ],
  'step-sew-line': (['row', 'column', 'section'] as const).flatMap((line) => [
    { line, places: [31], alike: 1 },
    { line, places: [14, 15], alike: 2 },
  ]),
  'step-join-lines': (['row', 'column', 'section'] as const).map((line) => ({ line })),
  'step-border': (['sides', 'ends'] as const).flatMap((part) => [null, 1, 9].map((border) => ({ border, part }))),
  'place-units': units,
  'resize-units': units,
  'replace-units': units,
  'move-units': units,
  'copy-units': units,
  'remove-units': units,
  'turn-units': units,
  'mirror-units': units,
  'paste-units': units,
  'press-as-proposed': [{ seams: 1 }, { seams: 7 }],
  'press-line': PRESS_HOWS.flatMap((how) => (['row', 'column'] as const).map((line) => ({ line, number: 73, how }))),
  'press-between': PRESS_HOWS.flatMap((how) => (['row', 'column'] as const).map((line) => ({ line, how }))),
  'lines-alternate': [{ line: 'row' }, { line: 'column' }],
  'press-row': (['row', 'column'] as const).flatMap((line) => PRESS_WAYS.map((way) => ({ line, number: 73, way }))),
  'put-in-places': [{ places: 1 }, { places: 25 }],
  'turn-places': [{ places: 1 }, { places: 25 }],
  'clear-places': [{ places: 1 }, { places: 25 }],
  'press-places': [{ places: 1 }, { places: 25 }],
  'hold-places': [{ places: 1 }, { places: 25 }],
  'frame-places': [{ places: 1 }, { places: 25 }],
  'tick-places': [{ places: 1 }, { places: 25 }],
  'recolour-patches': [{ patches: 1 }, { patches: 25 }],
  'add-fabrics': [{ fabrics: 1 }, { fabrics: 25 }],
  'move-turn-block': turned,
  'move-turn': turned.map((way) => ({ ...at, ...way })),
  'move-swap': [{ units: [at.unit, { type: 'side', noun: 'goose', side: 'top' }] }],
  'move-sew-mirrored': [at],
  'move-sew': [at],
  'unit-missing': [at],
  'unit-turned': turned.map((way) => ({ ...at, ...way })),
  'unit-mirrored': [at],
  'unit-swapped': [at],
  'unit-other': [at],
  'cut-for-units': [
    { kinds: [], method: 'plain', larger: [], measure: 'in' },
    { kinds: ['square', 'hst', 'hourglass', 'goose', 'diamond'], method: 'hst-2', larger: [0.125], measure: 'in' },
    { kinds: ['cornered', 'strips', 'half-rectangle', 'polygon'], method: 'corner-flip', larger: [0.5], measure: 'cm' },
    { kinds: ['hst'], method: 'hst-4', larger: [], measure: 'in' },
    { kinds: ['hst'], method: 'hst-8', larger: [], measure: 'in' },
    { kinds: ['hourglass'], method: 'qst-2', larger: [], measure: 'in' },
    { kinds: ['goose'], method: 'geese-4', larger: [], measure: 'in' },
    { kinds: ['strips'], method: 'strip-set', larger: [], measure: 'in' },
  ],
  'geese-listed': [{ geese: GEESE_LOOKS }],
  'batch-makes': [{ geese: GEESE_LOOKS }],
  'geese-to-keep': [{ geese: GEESE_LOOKS.slice(0, 1) }],
  'batches-of-geese': [
    { batches: 1, geese: 1, spare: 3 },
    { batches: 1, geese: 3, spare: 1 },
    { batches: 12, geese: 40, spare: 8 },
    { batches: 25, geese: 100, spare: 0 },
  ],
  batting: (['cotton-scrim', 'cotton-needled', 'bamboo', 'cotton-natural', 'wool', 'cotton-no-scrim', 'cotton-bleached', 'in-use'] as const).map(
    (batting) => ({ batting }),
  ),
  'batting-size': (['craft', 'crib', 'throw', 'twin', 'full', 'queen', 'king'] as const).map((size) => ({ size })),
  'chart-piece': (
    ['large-square', 'small-squares', 'squares', 'centre-square', 'halved-squares', 'across-on-point', 'side-square', 'corner-square'] as const
  ).map((piece) => ({ piece })),
  'hourglass-hands': [{ most: 31, all: 47 }],
  'not-trimmed': [{ method: 'plain' }, { method: 'corner-flip' }, { method: 'strip-set' }],
  'print-turned': [
    { fabrics: ['f51'], how: 'slanting', units: 1, of: 1, named: [] },
    { fabrics: ['f51', 'f52'], how: 'turned', units: 25, of: 25, named: [] },
    { fabrics: ['f51'], how: 'turned', units: 2, of: 25, named: [at.unit, { type: 'only', noun: 'goose' }] },
  ],
  'print-turned-to-fit': [{ fabric: 'f51', size: [50.5, 3.5], measure: 'in' }],
  'piece-too-large': [{ fabric: 'f51', size: [60, 70] }],
  'press-not-kept': (['no-seam', 'several-seams', 'end-of-seam', 'neither-side', 'later-word'] as const).map((reason) => ({ reason })),
  'not-worked-out': [{ error: 'e91' }],
  'program-error': [],
  'chains-must-clash': [
    {
      chains: [
        { joins: [31, 32, 33], length: 3, settled: 0, clashes: 1 },
        { joins: [34], length: 25, settled: 14, clashes: 15 },
      ],
    },
  ],
  'alike-all-weighed': [1, 25].map((choices) => ({ choices, atLeast: 31 })),
  'alike-best-found': [1, 25].map((choices) => ({ choices, atLeast: 31 })),
  'lift-rule': [at],
  'join-by-order': (['rows', 'columns', 'sections'] as const).flatMap((order) => [true, false].map((all) => ({ order, all }))),
  'sew-turned': [at],
  'sew-mirrored': [at],
  'copies-clash': [1, 25].map((clashes) => ({ clashes })),
  'copies-clash-through': [1, 25].map((clashes) => ({ clashes })),
  'copies-clash-by-rule': [0, 1, 25].map((clashes) => ({ clashes })),
  'copies-searched-in-bands': [{ atLeast: 31 }],
  'clashes-inside': [1, 25].map((clashes) => ({ clashes })),
  'rule-of-thumb': ([13, 14] as const).flatMap((count) =>
    (['as-said', 'clashes-all-the-same', 'nests-without'] as const).map((outcome) => ({ units: count, outcome })),
  ),
}

const ALL: readonly Message[] = (Object.keys(english) as MessageCode[]).flatMap((code): Message[] =>
  Object.hasOwn(SAMPLES, code) ? SAMPLES[code as keyof WithParams].map((params) => ({ code, params }) as Message) : [{ code, params: {} } as Message],
)

/** Names, ids and numbers above twelve; smaller ones may be said in words. */
const namesIn = (text: string): string[] => [...new Set(text.match(/[a-z]?:?\d[\d/]+/g) ?? [])].sort()
/** Words of every other English sentence that no German one has. */
const ENGLISH = /\b(the|of|is|are|and|with|this|that|these|which|give|than|each|two|by|seams?|units?|cloth|missing|list|object|half|squares?)\b/i

describe('the words for messages', () => {
  it('are those of the samples: each code is sampled, or has no parameters', () => {
    for (const [code, words] of Object.entries(english)) expect(typeof words === 'function', code).toBe(Object.hasOwn(SAMPLES, code))
  })

  it.each(ALL.map((message) => [`${message.code} ${JSON.stringify(message.params)}`, message] as const))('%s', (_, message) => {
    const [first, second] = [inEnglish(message), inGerman(message)]
    expect(second).not.toBe(first)
    expect(namesIn(second)).toEqual(namesIn(first))
    expect(second).not.toMatch(ENGLISH)
    expect(`${first} ${second}`).not.toMatch(/undefined|NaN|\[object/)
  })
})

describe('all that can be said', () => {
  const inBoth = ALL.map((message) => [inEnglish(message), inGerman(message)] as const)

  it('stands in one list, to be read in one go', async () => {
    await expect(`${inBoth.map((both) => both.join('\n')).join('\n\n')}\n`).toMatchFileSnapshot('sentences.txt')
  })

  it('is in the trade’s words and names nothing by an id', () => {
    for (const [first, second] of inBoth) {
      expect(first).not.toMatch(/\b(cloth|clash|clashes|meetings?|remove|mirror the|lift|anew|alike)\b/i)
      expect(second).not.toMatch(/Zusammenst|Treffen|wägen|gewogen|zurücknehmen/)
      expect(`${first} ${second}`).not.toMatch(/leftWing|rightWing|topLeft|goose-\d|j:\d|\bin in\b/)
    }
  })
})

/** What a report, a setting and a comparison say of a block. */
function saidOf(block: Block): Message[] {
  const { problems, advice, joins, meetings, pressing } = report(block)
  const setting = settingReport(block, { columns: 2, rows: 2, turn: 'none', press: 'same' })
  const other = produce(block, (draft) => turnUnits([(block.units[0] as Block['units'][number]).id]).change(draft as never))
  const { moves, differences } = asSewn(block, other)
  return [
    ...[...problems, ...advice, ...moves, ...differences].map(({ message }) => message),
    ...joins.map(({ press }) => press.why),
    ...meetings.flatMap(({ fix }) => fix.map(({ message }) => message)),
    pressing.proof,
    ...(setting.ok ? setting.value.why : [setting.message]),
  ]
}

function expectGerman(messages: readonly Message[]): void {
  for (const text of new Set(messages.map(inGerman))) expect(text).not.toMatch(ENGLISH)
}

describe('what is said of a block', () => {
  it('is all in German for stars of every colouring and method', () => {
    const pairs = [
      ['b', 'b'],
      ['b', 'c'],
    ] as const
    expectGerman(pairs.flatMap((wings) => saidOf(star([wings, ['c', 'b'], wings, wings], { borders: [{ finishedWidth: 1, fabric: 'd' }] }))))
  })

  it('is all in German for blocks at random, with gaps, overlaps and words on pressing', () => {
    const blocks = Array.from({ length: 16 }, (_, seed): Block => {
      const layout = tiling(sequence(seed), 4, 4)
      const press = [
        { at: [1, 0.5], toward: [1.5, 0.5] },
        { at: [2, 2], toward: 'open' as const },
      ] as const
      return blockOf(4, 4, seed % 5 === 0 ? layout.slice(1) : layout, { press, pressAlike: seed % 2 === 0, order: 'auto' })
    })
    const messages = blocks.flatMap(saidOf)
    expect(new Set(messages.map(({ code }) => code)).size).toBeGreaterThan(10)
    expectGerman(messages)
  })

  it('keeps a name that a maker gave as it is, though it be a word of ours', () => {
    const wide = blockOf(4, 1, [square('s', [0, 0], [4, 1], 'a')], { cloth: { usableWidth: 0.5 } })
    const block = { ...wide, fabrics: wide.fabrics.map((fabric) => ({ ...fabric, name: 'rows and borders' })) }
    const said = report(block).problems.map(({ message }) => inGerman(message))
    expect(said).toHaveLength(1)
    expect(said[0]).toContain('Ein Teil aus rows and borders, ')
  })

  it('is printed in English, and as JSON has nothing of its codes', () => {
    const [block] = [
      star([
        ['b', 'b'],
        ['b', 'c'],
        ['c', 'b'],
        ['b', 'b'],
      ]),
    ]
    const whole = report(block)
    const text = JSON.stringify(whole, printed)
    expect(text).not.toContain('"params"')
    const back = JSON.parse(text)
    expect(back.pressing.proof).toBe(inEnglish(whole.pressing.proof))
    expect(back.joins.map(({ press }: { press: { why: string } }) => press.why)).toEqual(whole.joins.map(({ press }) => inEnglish(press.why)))
  })
})

describe('what is wrong with a file', () => {
  const good = JSON.parse(
    writeBlock(
      star([
        ['b', 'b'],
        ['b', 'b'],
        ['b', 'b'],
        ['b', 'b'],
      ]),
    ),
  )
  const [unit] = good.units
  it.each([
    ['not-json', 'not a block'],
    ['other-format', { ...good, format: 'other' }],
    ['newer-version', { ...good, version: 9 }],
    ['not-name', { ...good, name: 3 }],
    ['not-measure', { ...good, measure: { unit: 'ft' } }],
    ['length-not-above-zero', { ...good, measure: { unit: 'in', seam: 0 } }],
    ['not-cell-count', { ...good, grid: { columns: 0, rows: 2, cell: 3 } }],
    ['not-block-count', { ...good, booklet: { blocks: 1.5 } }],
    ['not-id', { ...good, fabrics: [{ id: 'a:b', name: 'x', colour: '#ffffff' }] }],
    ['not-colour', { ...good, fabrics: [{ id: 'a', name: 'x', colour: 'red' }] }],
    ['not-one-of', { ...good, units: [{ ...unit, kind: 'round' }] }],
    ['not-turn', { ...good, units: [{ ...unit, turn: 7 }] }],
    ['not-list', { ...good, units: {} }],
    ['id-taken', { ...good, units: [unit, unit] }],
  ])('is said by its code: %s', (code, value) => {
    const read = readBlock(typeof value === 'string' ? value : JSON.stringify(value))
    expect(read.ok ? 'ok' : read.message.code).toBe(code)
  })
})
