/** A catalogue of one language: from an English sentence to its translation, or to its singular and plural. */
export type Plural = Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { readonly other: string }>
export type Catalogue = Readonly<Record<string, string | Plural>>
