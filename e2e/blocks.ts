/** Blocks that several tasks open as files; every fabric is invented. */

/** Four squares of which two short seams are asked to lie the same way: they clash. */
export const CLASHING = {
  format: 'nestwright.block',
  version: 1,
  name: 'Four squares (example)',
  measure: { unit: 'in' },
  grid: { columns: 2, rows: 2, cell: 3 },
  order: 'rows',
  fabrics: [
    { id: 'a', name: 'Oat', colour: '#efe6d2' },
    { id: 'b', name: 'Fern', colour: '#4f7a4a' },
  ],
  units: [0, 1, 2, 3].map((index) => ({
    id: `s${index}`,
    kind: 'square',
    at: [index % 2, Math.floor(index / 2)],
    size: [1, 1],
    fabrics: { patch: index % 3 === 0 ? 'a' : 'b' },
  })),
  press: [
    { at: [1, 0.5], toward: [1.5, 0.5] },
    { at: [1, 1.5], toward: [1.5, 1.5] },
  ],
}

/** So many squares by turns of two fabrics that their findings are a long list. */
export const checker = (side: number) => ({
  ...CLASHING,
  name: 'Many squares (example)',
  grid: { columns: side, rows: side, cell: 1 },
  units: Array.from({ length: side * side }, (_, index) => {
    const [x, y] = [index % side, Math.floor(index / side)]
    return { id: `s${index}`, kind: 'square', at: [x, y], size: [1, 1], fabrics: { patch: (x + y) % 2 === 0 ? 'a' : 'b' } }
  }),
  press: [],
})
