/**
 * English as it is spelt in America, made from the British spelling that everything is written in.
 *
 * In      a text, and the names in it that are a maker's own: those stay as she spelt them.
 * Out     the same text; only the words of this list change, with all their forms (`recoloured`, `Centres`, `centimetres`).
 * Source  from memory.
 */
const SPELLINGS: Readonly<Record<string, string>> = {
  colour: 'color',
  neighbour: 'neighbor',
  grey: 'gray',
  centred: 'centered',
  centre: 'center',
  centring: 'centering',
  mitred: 'mitered',
  mitre: 'miter',
  mitring: 'mitering',
  metre: 'meter',
}

const BRITISH = new RegExp(Object.keys(SPELLINGS).join('|'), 'gi')

function american(british: string): string {
  const spelt = SPELLINGS[british.toLowerCase()] as string
  return british.charAt(0) === spelt.charAt(0) ? spelt : spelt.charAt(0).toUpperCase() + spelt.slice(1)
}

/** `params`: those of a message, whose texts are a maker's own. */
export const americanSpelling = (text: string, params: object = {}): string => respelt(text, textsIn(params))

/** All texts in a message's parameters, but the names of sides, which are words of ours. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, one]) => (key === 'side' ? [] : textsIn(one)))
}

function respelt(text: string, names: readonly string[]): string {
  const kept = names.filter((name) => name.search(BRITISH) !== -1 && text.includes(name)).sort((a, b) => b.length - a.length)
  const [name] = kept
  if (name === undefined) return text.replace(BRITISH, american)
  return text
    .split(name)
    .map((part) => respelt(part, kept.slice(1)))
    .join(name)
}
