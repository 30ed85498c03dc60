/** Blocks that try the pages: free patches, many steps, names in many scripts; every fabric invented. */
import type { Block, Unit } from '../../geometry/index.ts'
import { blockOf, FABRICS } from '../help.ts'

/** A cell is 3 in. Two templates that fit a sheet beside each other, and one larger than a sheet. */
export const KITE: Block = blockOf(
  4,
  4,
  [
    {
      id: 'sky',
      kind: 'polygon',
      corners: [
        [0, 0],
        [4, 0],
        [4, 1],
        [0, 1],
      ],
      fabrics: { patch: 'a' },
    },
    {
      id: 'left',
      kind: 'polygon',
      corners: [
        [0, 1],
        [1, 1],
        [0, 3],
      ],
      fabrics: { patch: 'b' },
    },
    {
      id: 'kite',
      kind: 'polygon',
      corners: [
        [1, 1],
        [4, 1],
        [4, 3],
        [0, 3],
      ],
      fabrics: { patch: 'c' },
    },
    {
      id: 'ground',
      kind: 'polygon',
      corners: [
        [0, 3],
        [4, 3],
        [4, 4],
        [0, 4],
      ],
      fabrics: { patch: 'd' },
    },
  ],
  { name: 'Kite' },
)

/** Rows of different units: more steps than any sheet holds. */
export function manySteps(): Block {
  const units = Array.from({ length: 64 }, (_, place): Unit => {
    const at = [place % 8, Math.floor(place / 8)] as const
    const fabrics = { upper: FABRICS[place % 4]?.id as string, lower: FABRICS[(place * 3 + Math.floor(place / 8) + 1) % 4]?.id as string }
    return place % 3 === 0
      ? { id: `s${place}`, kind: 'square', at, size: [1, 1], fabrics: { patch: fabrics.upper } }
      : { id: `h${place}`, kind: 'hst', at, size: [1, 1], turn: (place % 4) as 0 | 1 | 2 | 3, fabrics }
  })
  return blockOf(8, 8, units, { name: 'Many steps' })
}

/** A brick-red photograph of 32 by 24 pixels. */
export const PHOTOGRAPH =
  'data:image/jpeg;base64,/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABQODxIPDRQSEBIXFRQYHjIhHhwcHj0sLiQySUBMS0dARkVQWnNiUFVtVkVGZIhlbXd7gYKBTmCNl4x9lnN+gXz/2wBDARUXFx4aHjshITt8U0ZTfHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHx8fHz/wAARCAAYACADASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAT/xAAUEAEAAAAAAAAAAAAAAAAAAAAA/8QAFgEBAQEAAAAAAAAAAAAAAAAAAAQF/8QAFBEBAAAAAAAAAAAAAAAAAAAAAP/aAAwDAQACEQMRAD8AjASNMAAAAAB//9k='

/** A name without a space, one in Greek and Cyrillic, one in letters that the face lacks. */
export const LONG = 'Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaftsmuster'
export const GREEK = 'Άστρο της αυγής · Утренняя звезда'
export const OTHER = '星 猫 🐈‍⬛ star'
