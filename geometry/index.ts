/** The public face of the geometry: what screens and commands may use. */
import type { PrintAsk } from './printing/booklet.ts'

export * from './block/asSewn.ts'
export type { Edit, Mutable } from './block/edits.ts'
export * from './block/edits.ts'
export * from './block/bookletEdits.ts'
export * from './block/fabricEdits.ts'
export { readBlock, checkBlock, writeBlock } from './block/read.ts'
export * from './block/values.ts'
export { cellOf, lengthOf, roundOf, seamOf, usableWidthOf } from './block/measure.ts'
export { colourOfLab, type Lab, labOf, lightnessOf, mixed } from './colour/lab.ts'
export * from './colour/palette.ts'
export * from './colour/photo.ts'
export * from './colour/print.ts'
export {
  alikePatches,
  backgroundOf,
  type Colouring,
  type Colourings,
  type ColouringWishes,
  colouringsOf,
  MOST_COLOURINGS,
} from './colouring/colourings.ts'
export * from './colourReport.ts'
export { type Batches, batchOf, leastBatches, type Wings, wingsSeen } from './cutting/batches.ts'
export * from './cutting/chart.ts'
export * from './cutting/compare.ts'
export * from './cutting/finishing.ts'
export * from './cutting/goes.ts'
export * from './cutting/nearest.ts'
export * from './cutting/stars.ts'
export * from './cutting/trim.ts'
export { piecesFrom, stripsFrom, toBuy } from './cutting/yield.ts'
export { type Box, type CutPicture, cutPicture, type PictureCut, type PicturePiece, type PictureStrip } from './cutting/cutPicture.ts'
export { type Cloth, type ClothDepth, stripsFor } from './cutting/strips.ts'
export { type ClothFor, clothFor, type StashFor, stashFor } from './cutting/cloth.ts'
export { type CutPiece, type OneGo, oneGo } from './cutting/oneGo.ts'
export { isTrimmed } from './cutting/units.ts'
export { type FromStash, fromStash, PRECUTS, type StashPiece } from './cutting/stash.ts'
export { parseRational, type Rational, toFile, toNumber } from './exact/rational.ts'
export * from './exact/lengths.ts'
export { areaOf } from './plane/convex.ts'
export * from './quilting/battings.ts'
export { echoLines } from './quilting/echo.ts'
export { type Gap, largestGap } from './quilting/gap.ts'
export { lineLength, type Place, routeLines, type StitchedLine } from './quilting/lines.ts'
export type { BlockCorner, QuiltingWishes } from './quilting/quilt.ts'
export { squareSpiral } from './quilting/spiral.ts'
export { type QuiltingPicture, quiltingSvg } from './quilting/svg.ts'
export { type Needle, needleAt, type TimedPoint, timedPoints } from './quilting/timed.ts'
export { findings, type IronedSheet, type Layered, layered, quiltingRoute, report, wrongSide } from './report.ts'
export * from './settingReport.ts'
export { KIND_FACTS, methodOf, shapeAtRest, shapeOf, stripNames } from './units/kinds.ts'
export { pictureOf } from './units/picture.ts'
export * from './values.ts'
export { bookletOf, programWords, wordsOf } from './writing/booklet/booklet.ts'
export { stepsText } from './writing/booklet/text.ts'
export * from './writing/booklet/values.ts'
export * from './writing/chart.ts'
export * from './writing/cutList.ts'
export type { PrintAsk } from './printing/booklet.ts'
export { drawingSvg, type SvgAsk } from './printing/drawingSvg.ts'
export { type Embedded, filesInPdf, isPdf } from './printing/inside.ts'
export type { NewPdf, PrintTools } from './printing/library.ts'
export { type Paper, PAPER_NAMES, PAPERS, SINGLE_PAGES, type SinglePage } from './printing/paper.ts'

/** The booklet as a PDF. Its pages are loaded when somebody prints. */
export const printBooklet = async (ask: PrintAsk): Promise<Uint8Array> => (await import('./printing/booklet.ts')).printBooklet(ask)
