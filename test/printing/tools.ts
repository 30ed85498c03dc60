/// <reference path="../../geometry/pdfkit.d.ts" />
/** What the tests print with: the library, and the type that the command and the page bring along. */
import { readFileSync } from 'node:fs'
import Pdf from 'pdfkit'
import type { PrintTools } from '../../geometry/index.ts'

const face = (file: string): Uint8Array => new Uint8Array(readFileSync(`node_modules/@expo-google-fonts/inter/${file}`))

export const TOOLS: PrintTools = {
  Pdf,
  faces: { text: face('400Regular/Inter_400Regular.ttf'), strong: face('600SemiBold/Inter_600SemiBold.ttf') },
}
