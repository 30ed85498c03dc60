/** A catalogue of one language: English sentence → sentence, or its forms by count. */
export type Plural = Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { readonly other: string }>
export type Catalogue = Readonly<Record<string, string | Plural>>
