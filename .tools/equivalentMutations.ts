/**
 * Mutations that can change no answer, each with the reason why: they are not drawn. Only what is proved stands here; what merely takes longer or is
 * hard to test is drawn and counted.
 */
interface Equivalent {
  readonly file: string
  /** Part of the line, with what is replaced between the marks. */
  readonly code: string
  readonly by: string
  readonly why: string
}

const EQUIVALENT: readonly Equivalent[] = [
  {
    file: 'geometry/exact/rational.ts',
    code: 'common «>» 1n',
    by: '>=',
    why: 'dividing both by a common factor of 1 changes neither',
  },
  {
    file: 'geometry/writing/booklet/templates.ts',
    code: 'return outside ? «2» : 1',
    by: '(3)',
    why: 'ranks are only compared, and 3 is above 1 as 2 is',
  },
  {
    file: 'geometry/pressing/live/incrementalSew.ts',
    code: 'if («own.place === index && own.patches[0]?.number === first») return own',
    by: 'false',
    why: 'a part that has its place and number already is given the same ones again',
  },
  {
    file: 'geometry/plane/vertices.ts',
    code: 'if («quick !== null») return quick',
    by: 'false',
    why: 'the exact comparison that follows has the same sign as the quick one wherever that one is sure',
  },
  {
    file: 'geometry/edits/arrangeEdits.ts',
    code: 'const shorter = compare(w, h) «<=» 0 ? w : h',
    by: '<',
    why: 'where both sides are as long, either is the shorter',
  },
  {
    file: 'geometry/edits/arrangeEdits.ts',
    code: 'const shorter = compare(w, h) <= «0» ? w : h',
    by: '(-1)',
    why: 'a comparison gives −1, 0 or 1, and where both sides are as long, either is the shorter',
  },
  {
    file: 'geometry/piecing/innerRectangle.ts',
    code: 'if (to[0] «<=» from[0] || to[1] <= from[1]) continue',
    by: '<',
    why: 'a rectangle of no width holds no part, and one with fewer than two is passed over',
  },
  {
    file: 'geometry/piecing/innerRectangle.ts',
    code: 'if (to[0] <= from[0] || to[1] «<=» from[1]) continue',
    by: '<',
    why: 'a rectangle of no height holds no part, and one with fewer than two is passed over',
  },
]

/** Whether a change of a text, from `start` to `end`, is one of them. */
export function isEquivalent(text: string, { file, start, end, by }: { file: string; start: number; end: number; by: string }): boolean {
  const lineEnd = text.indexOf('\n', end)
  const marked = `${text.slice(text.lastIndexOf('\n', start) + 1, start)}«${text.slice(start, end)}»${text.slice(end, lineEnd < 0 ? undefined : lineEnd)}`
  return EQUIVALENT.some((one) => one.file === file && one.by === by && marked.includes(one.code))
}
