/// <reference path="../../geometry/pdfkit.d.ts" />
/** Printing in tests: with the library and the type that the command and the page bring along. */
import { readFileSync } from 'node:fs'
import Pdf from 'pdfkit'
import {
  type Block,
  bookletOf,
  type Edition,
  type Paper,
  printBooklet,
  type PrintTools,
  report,
  type SinglePage,
  writeBlock,
} from '../../geometry/index.ts'
import { type ReadPage, type ReadPdf, readPdf } from './pdf.ts'

const face = (file: string): Uint8Array => new Uint8Array(readFileSync(`node_modules/@expo-google-fonts/inter/${file}`))

export const TOOLS: PrintTools = {
  Pdf,
  faces: { text: face('400Regular/Inter_400Regular.ttf'), strong: face('600SemiBold/Inter_600SemiBold.ttf') },
}

export const print = (block: Block, paper: Paper = 'letter', only: SinglePage | null = null, edition: Edition = 'full'): Promise<Uint8Array> => {
  const said = report(block)
  const file = new TextEncoder().encode(writeBlock(block))
  return printBooklet({ report: said, block, booklet: bookletOf(said, block), file, paper, only, edition, tools: TOOLS })
}
export const printed = async (block: Block, paper?: Paper, only?: SinglePage | null, edition?: Edition): Promise<ReadPdf> =>
  readPdf(await print(block, paper, only, edition))
export const withTitle = ({ pages }: ReadPdf, title: string): ReadPage => {
  const page = pages.find(({ text }) => text.split('\n').includes(title))
  if (page === undefined) throw new Error(`no page is titled ${title}`)
  return page
}
