/** The lines and marks of the booklet's pictures that a key explains. */
export type LineStyleWords = Readonly<Record<'stitch' | 'marked' | 'cut' | 'fold' | 'trim' | 'blade', string>>
export type MarkWords = Readonly<Record<'nests' | 'clashes' | 'open' | 'pin' | 'dot' | 'tip', string>>
