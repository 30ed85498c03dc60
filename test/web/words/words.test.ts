/** The catalogue: nothing said in English only, nothing left over, and what the geometry says is told too. */
import { describe, expect, it } from 'vitest'
import type { Block } from '../../../geometry/values/block.ts'
import { asSewn, type Message, readBlock, report, settingReport, turnUnits, writeBlock } from '../../../geometry/index.ts'
import { english, inEnglish } from '../../../geometry/words/english.ts'
import { german as germanMessages } from '../../../geometry/words/german.ts'
import { produce } from 'immer'
import { german } from '../../../web/words/german.ts'
import { germanFindings } from '../../../web/words/germanFindings.ts'
import { sayWith, t, tell, tn, translate } from '../../../web/words/words.ts'
import { sequence, star } from '../../help.ts'
import { tiling } from '../../layouts.ts'
import { blockOf } from '../../help.ts'
import { wordsUsed } from './wordsUsed.ts'

const PLACE = /\{\w+\}/g
const placesOf = (text: string): string[] => [...new Set(text.match(PLACE) ?? [])].sort()
const inGerman = <T>(said: () => T): T => {
  sayWith('de', german, germanFindings, germanMessages)
  try {
    return said()
  } finally {
    sayWith('en', {}, {}, english)
  }
}

describe('the German catalogue', () => {
  it('says every sentence of the screen', () => {
    expect([...wordsUsed()].filter((text) => !Object.hasOwn(german, text))).toEqual([])
  })

  it('has nothing left over', () => {
    const used = wordsUsed()
    expect(Object.keys(german).filter((text) => !used.has(text))).toEqual([])
  })

  it('leaves no place out and makes none up', () => {
    for (const [english, words] of [...Object.entries(german), ...Object.entries(germanFindings)]) {
      const forms = typeof words === 'string' ? [words] : Object.values(words)
      // A form for one may leave the count out: "eine Einheit".
      const besidesCount = (text: string): string[] => placesOf(text).filter((place) => place !== '{n}')
      for (const form of forms) expect(besidesCount(form), english).toEqual(besidesCount(english))
    }
  })

  it('counts in its own forms', () => {
    expect(inGerman(() => [tn(1, 'one batch', '{n} batches'), tn(3, 'one batch', '{n} batches'), t('Save a file')])).toEqual([
      'ein Satz',
      '3 Sätze',
      'Datei sichern',
    ])
  })
})

/** What a report, a setting and a comparison say of a block. */
function saidOf(block: Block): (string | Message)[] {
  const { problems, joins, meetings, pressing } = report(block)
  const setting = settingReport(block, { columns: 2, rows: 2, turn: 'none', press: 'same' })
  const other = produce(block, (draft) => turnUnits([(block.units[0] as Block['units'][number]).id]).change(draft as never))
  return [
    ...problems.map(({ message }) => message),
    ...joins.map(({ press }) => press.why),
    ...meetings.flatMap(({ fix }) => fix.map(({ message }) => message)),
    pressing.proof,
    ...(setting.ok ? setting.value.why : [setting.message]),
    ...asSewn(block, other).moves.map(({ message }) => message),
    ...asSewn(block, other).differences.map(({ message }) => message),
  ]
}

/** Left in English where the sentence, whole, is what it was. */
const untold = (sentences: readonly (string | Message)[]): (string | Message)[] =>
  inGerman(() => [...new Set(sentences)].filter((one) => (typeof one === 'string' ? tell(one) === one : translate(one) === inEnglish(one))))

describe('what the geometry says', () => {
  it('is told in German for stars of every colouring and method', () => {
    const pairs = [
      ['b', 'b'],
      ['b', 'c'],
    ] as const
    const stars = pairs.map((wings) => star([wings, ['c', 'b'], wings, wings], { borders: [{ finishedWidth: 1, fabric: 'd' }] }))
    expect(untold(stars.flatMap(saidOf))).toEqual([])
  })

  it('is told in German for blocks at random, with gaps, overlaps and words on pressing', () => {
    const blocks = Array.from({ length: 16 }, (_, seed): Block => {
      const next = sequence(seed)
      const units = tiling(next, 4, 4)
      const press = [
        { at: [1, 0.5], toward: [1.5, 0.5] },
        { at: [2, 2], toward: 'open' as const },
      ] as const
      return blockOf(4, 4, seed % 5 === 0 ? units.slice(1) : units, { press, pressAlike: seed % 2 === 0, order: 'auto' })
    })
    expect(untold(blocks.flatMap(saidOf))).toEqual([])
  })

  it('is told in German for files that cannot be read', () => {
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
    const broken: unknown[] = [
      'not a block',
      { ...good, format: 'other' },
      { ...good, version: 9 },
      { ...good, name: 3 },
      { ...good, measure: { unit: 'ft' } },
      { ...good, measure: { unit: 'in', seam: 0 } },
      { ...good, grid: { columns: 0, rows: 2, cell: 3 } },
      { ...good, fabrics: [{ id: 'a:b', name: 'x', colour: '#ffffff' }] },
      { ...good, fabrics: [{ id: 'a', name: 'x', colour: 'red' }] },
      { ...good, units: [{ ...good.units[0], kind: 'round' }] },
      { ...good, units: [{ ...good.units[0], turn: 7 }] },
      { ...good, units: [{ ...good.units[0], size: [3, 1] }] },
      { ...good, units: [good.units[0], good.units[0]] },
      { ...good, units: {} },
      {
        ...good,
        units: [
          {
            id: 'f',
            kind: 'polygon',
            corners: [
              [0, 0],
              [1, 1],
              [1, 0],
              [0, 1],
            ],
            fabrics: { patch: 'a' },
          },
        ],
      },
    ]
    const messages = broken.flatMap((value) => {
      const read = readBlock(typeof value === 'string' ? value : JSON.stringify(value))
      return read.ok ? [] : [read.message]
    })
    expect(messages).toHaveLength(broken.length)
    expect(untold(messages)).toEqual([])
  })
})
