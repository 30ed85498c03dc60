/** Times as a maker reads them in her region. Source: the hours and dates of the regions in Unicode CLDR, as the runtime has them. */
import { afterEach, expect, it, vi } from 'vitest'
import { dayOrTime } from '../../../web/library/timeText.ts'

const EVENING = new Date(2026, 4, 9, 19, 12).getTime()
const said = (language: string, now: number): string => {
  vi.stubGlobal('navigator', { language })
  // Some runtimes put a narrow space before "PM".
  return dayOrTime(EVENING, now).replace(/\s/g, ' ')
}

afterEach(() => vi.unstubAllGlobals())

it('gives today’s hour as the region writes it, without a leading zero', () => {
  expect(said('en-GB', EVENING)).toBe('today at 19:12')
  expect(said('en-US', EVENING)).toBe('today at 7:12 PM')
})

it('gives an older day by its date, in the language of the page', () => {
  const nextDay = EVENING + 24 * 3_600_000
  expect(said('en-GB', nextDay)).toBe('9 May 2026')
  expect(said('en-US', nextDay)).toBe('May 9, 2026')
  expect(said('de-DE', nextDay)).toBe('9 May 2026')
})
