/** American spelling. Source of each pair: from memory. */
import { afterEach, describe, expect, it } from 'vitest'
import { americanSpelling } from '../../../web/words/americanSpelling.ts'
import { setLanguage, setWords, spelt, t, tn } from '../../../web/words/words.ts'

describe('American spelling', () => {
  it.each([
    ['Colour', 'Color'],
    ['Patch recoloured; colouring, colours', 'Patch recolored; coloring, colors'],
    ['Centre, centred, centres, centring', 'Center, centered, centers, centering'],
    ['Neighbouring fabrics beside a neighbour’s', 'Neighboring fabrics beside a neighbor’s'],
    ['mitre, mitred, Mitres', 'miter, mitered, Miters'],
    ['Greys and grey', 'Grays and gray'],
    ['in metres, centimetres or a millimetre', 'in meters, centimeters or a millimeter'],
    ['Symmetry and geometry; a central square, batting, basting, selvage', 'Symmetry and geometry; a central square, batting, basting, selvage'],
  ])('of “%s”', (british, spelling) => {
    expect(americanSpelling(british)).toBe(spelling)
  })

  it('leaves a maker’s own names as she spelt them', () => {
    expect(americanSpelling('Grey dawn is a grey; colour Dawn', ['Grey dawn', 'Dawn'])).toBe('Grey dawn is a gray; color Dawn')
    expect(americanSpelling('Colour me and Colour', ['Colour', 'Colour me'])).toBe('Colour me and Colour')
  })
})

describe('a page in American English', () => {
  afterEach(() => setLanguage('en').catch(() => setWords('en', {}, null)))

  it('spells labels so, but not the names in them, and no name in a message', async () => {
    Object.assign(globalThis, { document: { documentElement: { lang: '' } } })
    await setLanguage('en-US')
    expect(t('Colour of {name}', { name: 'Grey dove' })).toBe('Color of Grey dove')
    expect(tn(2, 'Patch recoloured in {fabric}.', '{n} patches recoloured in {fabric}.', { fabric: 'Grey' })).toBe('2 patches recolored in Grey.')
    expect(spelt('The centre of Colour wheel is grey', { fabric: 'Colour wheel', place: { side: 'centre' } })).toBe(
      'The center of Colour wheel is gray',
    )
    await setLanguage('en')
    expect(t('Colour of {name}', { name: 'Grey dove' })).toBe('Colour of Grey dove')
  })
})
