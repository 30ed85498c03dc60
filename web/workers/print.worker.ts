/// <reference path="../../geometry/pdfkit.d.ts" />
/**
 * Makes the booklet's PDF in a worker. The library, the typefaces and the page code are loaded only when somebody prints.
 *
 * In      the block or quilt, and what to print of it on which paper.
 * Out     progress, chapter by chapter; then the bytes, or what went wrong.
 */
import textFace from '@expo-google-fonts/inter/400Regular/Inter_400Regular.ttf?url'
import strongFace from '@expo-google-fonts/inter/600SemiBold/Inter_600SemiBold.ttf?url'
import Pdf from 'pdfkit'
import {
  type Block,
  type BookletLanguage,
  bookletOf,
  type Edition,
  type Paper,
  printBooklet,
  printQuiltBooklet,
  type Quilt,
  quiltBooklet,
  quiltReport,
  report,
  type SinglePage,
  writeBlock,
  writeQuilt,
} from '../../geometry/index.ts'
import { postProgress, serveJobs } from './serveJobs.ts'

/** What to print, and on which paper. */
export interface PrintChoice {
  readonly paper: Paper
  readonly edition: Edition
  readonly language: BookletLanguage
  /** One page alone; null for the booklet. */
  readonly only: SinglePage | null
}

export interface QuiltPrintChoice {
  readonly paper: Paper
  /** Null for the whole quilt. */
  readonly part: number | null
}

const jobs = { print, printQuilt }
export type PrintJobs = typeof jobs
/** Progress while the pages are made: chapters done, and how many there are. */
export type PrintProgress = readonly [done: number, of: number]

serveJobs(jobs)

async function print(block: Block, { paper, edition, language, only }: PrintChoice): Promise<Uint8Array<ArrayBuffer>> {
  const [text, strong] = await Promise.all([faceAt(textFace), faceAt(strongFace)])
  const said = report(block)
  const bytes = await printBooklet({
    report: said,
    block,
    booklet: bookletOf(said, block, language),
    file: new TextEncoder().encode(writeBlock(block)),
    paper,
    edition,
    only,
    tools: { Pdf, faces: { text, strong } },
    onProgress: (done, of) => postProgress([done, of] satisfies PrintProgress),
  })
  return new Uint8Array(bytes)
}

/** The booklet of a quilt, or of one part of it, numbered from 1. */
async function printQuilt(quilt: Quilt, { paper, part }: QuiltPrintChoice): Promise<Uint8Array<ArrayBuffer>> {
  const [text, strong] = await Promise.all([faceAt(textFace), faceAt(strongFace)])
  const said = quiltReport(quilt)
  const bytes = await printQuiltBooklet({
    quilt,
    report: said,
    booklet: quiltBooklet(quilt, said, part),
    file: new TextEncoder().encode(writeQuilt(quilt)),
    paper,
    tools: { Pdf, faces: { text, strong } },
    onProgress: (done, of) => postProgress([done, of] satisfies PrintProgress),
  })
  return new Uint8Array(bytes)
}

async function faceAt(address: string): Promise<Uint8Array> {
  const answer = await fetch(address)
  if (!answer.ok) throw new Error(`the type for the pages could not be fetched (${answer.status})`)
  return new Uint8Array(await answer.arrayBuffer())
}
