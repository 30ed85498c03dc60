/**
 * What is usual where the maker's browser is at home: the unit that quilts are measured in, and the paper in the printer.
 *
 * In      a language tag such as `en-GB`; one without a region stands for where most of its speakers live.
 * Source  quilts are measured in inches where English is spoken, in Britain and Australia too: common practice, no source. Paper: the territories of
 *         Unicode CLDR, supplemental data, `paperSize type="US-Letter"` (from memory).
 */
import { convertMeasure, type Block, type MeasureUnit, type Paper } from '../../geometry/index.ts'
import { editResult } from './editResult.ts'

const LETTER: ReadonlySet<string> = new Set('BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' '))
/** Besides wherever English is spoken. */
const INCHES: ReadonlySet<string> = new Set(['CA', 'PR', 'US'])

function placeOf(tag: string): { readonly language: string; readonly region: string } {
  try {
    const { language, region } = new Intl.Locale(tag).maximize()
    return { language, region: region ?? '' }
  } catch {
    return { language: 'en', region: 'US' }
  }
}

const here = (): string => globalThis.navigator?.language ?? 'en-US'

export function usualUnit(tag: string = here()): MeasureUnit {
  const { language, region } = placeOf(tag)
  return language === 'en' || INCHES.has(region) ? 'in' : 'cm'
}

export const usualPaperHere = (tag: string = here()): Paper => (LETTER.has(placeOf(tag).region) ? 'letter' : 'a4')

/** An example block, measured as is usual here. */
export const measuredHere = (block: Block, tag: string = here()): Block =>
  usualUnit(tag) === block.measure.unit ? block : editResult(block, convertMeasure(usualUnit(tag)))
