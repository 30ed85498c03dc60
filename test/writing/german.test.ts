/** Booklets in German: all of it, with the same steps, numbers and pictures as in English; a maker's own words stay hers in both. */
import { describe, expect, it } from 'vitest'
import { type Block, bookletOf, report, stepsText } from '../../geometry/index.ts'
import { BLOCKS } from './blocks.ts'

/** Words that no German sentence has; fabrics and blocks keep the names that their makers gave. */
const ENGLISH = /\b(the|and|with|sew|press|cut|from|each|should|seam|seams|your|before|draw|place|trim)\b/i

/** Names of blocks, which stand in the text as they are. */
const named = (text: string, { name, fabrics }: Block): string =>
  [name, ...fabrics.map((fabric) => fabric.name)].reduce((all, one) => all.replaceAll(one, ''), text)

describe.each(Object.entries(BLOCKS))('%s', (_, block) => {
  const said = report(block)
  const [english, german] = [bookletOf(said, block, 'en'), bookletOf(said, block, 'de')]

  it('has no English left over', () => {
    const titles = german.parts.flatMap(({ steps }) => steps.flatMap(({ drawings }) => drawings.map(({ title }) => title)))
    for (const line of named([stepsText(german), ...titles].join('\n'), block).split('\n')) expect(line).not.toMatch(ENGLISH)
  })

  it('has the same steps, each with the same joins, pieces and pictures', () => {
    const shape = ({ parts }: typeof english) =>
      parts.map(({ key, steps }) => [key, steps.map(({ key: step, joins, units, cut, drawings }) => [step, joins, units, cut, drawings.length])])
    expect(shape(german)).toEqual(shape(english))
  })

  it('counts words as up to date in whichever language they were written beside', () => {
    const [step] = german.parts.flatMap(({ steps }) => [...steps])
    const steps = { [step?.key as string]: { words: 'Mine.', of: step?.sentences.join('\n') as string } }
    for (const language of ['en', 'de'] as const) {
      const made = bookletOf(said, { ...block, booklet: { steps } }, language)
      expect(made.parts[0]?.steps[0]?.edited).toEqual({ words: 'Mine.', stale: false })
    }
  })
})
