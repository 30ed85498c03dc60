/** The public face of the geometry: what screens and commands may use. */
import type { Words } from './words/words.ts'

export * from './edits/sewnComparison.ts'
export type { Edit } from './edits/unitEdits.ts'
export * from './edits/arrangeEdits.ts'
export { boxAround } from './block/boxes.ts'
export { boxOf, type ExactBox } from './units/unitBox.ts'
export { exactPoint } from './units/kinds.ts'
export * from './edits/clipboardText.ts'
export * from './edits/symmetry.ts'
export * from './edits/freePatches.ts'
export * from './edits/unitEdits.ts'
export * from './edits/bookletEdits.ts'
export * from './edits/quiltingEdits.ts'
export { forgetPress, type PressChoice, pressSeams } from './edits/pressEdits.ts'
export { separateStrips, setStripCount, STRIP_COUNTS } from './edits/stripEdits.ts'
export { turnAboutMiddle, turnEach } from './edits/turnEdits.ts'
export * from './edits/fabricEdits.ts'
export {
  convertMeasure,
  finishedSizeOf,
  type FinishedSize,
  fitFinishedSize,
  fitUnitSize,
  type GridSize,
  setFinishedSize,
  type SizeFit,
} from './edits/sizeEdits.ts'
export { MOST_VALUES_OF_MANY, parseJson } from './values/parseJson.ts'
export { readBlock, checkBlock, isBlockCount, LONGEST_WORDS, MOST_BLOCKS, MOST_UNITS, writeBlock } from './block/read.ts'
export * from './values/block.ts'
export * from './values/quilt.ts'
export {
  type BoardCode,
  type BoardMessage,
  type EditCode,
  type EditName,
  type Message,
  message,
  type QuiltEditName,
  type Read,
} from './values/messages.ts'
export { boardEnglish } from './words/boardEnglish.ts'
export { english, inEnglish } from './words/english.ts'
export { printed } from './words/printed.ts'
export { say, type Words } from './words/words.ts'
export { cellOf, lengthOf, roundOf, seamOf, usableWidthOf } from './block/lengthsOf.ts'
export { patchCount } from './block/patchCount.ts'
export { quiltingOf } from './block/quiltingOf.ts'
export { unitPlaces } from './block/unitPlaces.ts'
export { lightnessOf, mixed } from './colour/lightness.ts'
export * from './colour/photoPalette.ts'
export { LONGEST_PHOTO, photoSize } from './colour/pictureSize.ts'
export * from './colour/print.ts'
export {
  matchingPatches,
  backgroundOf,
  type ColouringRequest,
  MOST_COLOURINGS,
} from './colouring/colourings.ts'
export * from './report/colourReport.ts'
export { type Wings, wingsSeen } from './cutting/batches/geeseBatches.ts'
export * from './cutting/sizes/sizeChart.ts'
export * from './cutting/sizes/compareMethods.ts'
export * from './cutting/finishing.ts'
export * from './cutting/runsNeeded.ts'
export { type FabricPair, type HourglassPlan, hourglassPlans, isSharing } from './cutting/batches/hourglasses.ts'
export * from './cutting/batches/nearestColouring.ts'
export * from './cutting/batches/batchStars.ts'
export * from './cutting/sizes/trim.ts'
export {
  type CuttingDiagram,
  cuttingDiagram,
  type DiagramCut,
  type DiagramStrip,
} from './cutting/cuttingDiagram.ts'
export { type FabricForCopies, fabricForCopies, type StashFor, stashFor } from './cutting/strips/fabricForCopies.ts'
export { isTrimmed } from './cutting/matchingUnits.ts'
export { PRECUTS, type StashPiece } from './cutting/strips/stash.ts'
export { add, divide, multiply, parseRational, type Rational, rational, subtract, toFile, toNumber } from './exact/rational.ts'
export { base64Of, bytesOfBase64 } from './exact/base64.ts'
export * from './exact/lengths.ts'
export { areaOf } from './plane/convex.ts'
export { type SpatialIndex, spatialIndex } from './plane/spatialIndex.ts'
export * from './quilting/battings.ts'
export { fillsOf } from './quilting/fills.ts'
export { largestGap } from './quilting/largestGap.ts'
export { lengthOfLine, routeLines, type StitchedLine } from './quilting/stitchedLines.ts'
export { numberedStops } from './quilting/numberedStops.ts'
export { quiltingSvg } from './printing/quiltingSvg.ts'
export { needleAt, timedPoints } from './quilting/needlePosition.ts'
export { liveFindings } from './report/liveFindings.ts'
export { type IronedSheet, type Layered, layered, wrongSide } from './report/layers.ts'
export { findings, hasLayers } from './report/report.ts'
export * from './report/settingReport.ts'
export * from './quilt/edits/blockEdits.ts'
export { compareWays, type WayFacts } from './quilt/compareWays.ts'
export { cellForAll } from './quilt/edits/fitSizes.ts'
export * from './quilt/edits/partEdits.ts'
export * from './quilt/edits/placeEdits.ts'
export * from './quilt/edits/quiltEdit.ts'
export * from './quilt/edits/wayEdits.ts'
export * from './quilt/layout.ts'
export { checkQuilt, readQuilt, writeQuilt } from './quilt/read.ts'
export { quiltOfCopies } from './quilt/copies.ts'
export { partCount } from './quilt/parts.ts'
export { isError } from './quilt/problems.ts'
export { quiltReport, type QuiltReport } from './quilt/report.ts'
export { quiltingRoute, report } from './report/wholeReport.ts'
export { KIND_FACTS, methodOf, shapeOf } from './units/kinds.ts'
export { lieOf } from './units/fabricGrain.ts'
export { pictureOf } from './units/unitPicture.ts'
export * from './values/report.ts'
export { BOOKLET_LANGUAGES, type BookletLanguage } from './words/booklet/bookletWords.ts'
export { bookletOf, wordsOf } from './writing/booklet/booklet.ts'
export { programWords } from './writing/booklet/draftStep.ts'
export { sewingSteps, unitLetters } from './writing/booklet/sewingSteps.ts'
export { trimPictures } from './writing/booklet/trimming/trimPictures.ts'
export { stepsText } from './writing/booklet/stepsText.ts'
export * from './writing/booklet/values.ts'
export { quiltBooklet } from './writing/quilt/quiltBooklet.ts'
export { quiltCutListText } from './writing/quilt/quiltCutListText.ts'
export { quiltTable } from './writing/quilt/quiltTables.ts'
export { quiltStepsText } from './writing/quilt/quiltStepsText.ts'
export * from './writing/sizeChartText.ts'
export * from './writing/cutListText.ts'
export { cutListCsv } from './writing/cutListCsv.ts'
export { cutPieces, type ListedPiece } from './writing/cutPieces.ts'
export type { TableForm } from './writing/tableWords.ts'
export { sanitiseLine, sanitiseLines } from './writing/sanitiseText.ts'
export * from './writing/tables.ts'
export { type LineSeam, type PressLine, pressLines } from './writing/pressLines.ts'
export { type PieceName, type SewnPiece, sewnPieces, pressedTo } from './writing/pieceNames.ts'
export { bookletPdf as printBooklet } from './printing/booklet.ts'
export { drawingSvg } from './printing/drawingSvg.ts'
export { quiltPdf as printQuiltBooklet } from './printing/quiltPages/quiltPdf.ts'
export { QUILT_VIEWS, quiltSvg } from './printing/quiltPages/quiltSvg.ts'
export { layersSvg, VIEWS, type View, viewSvg } from './printing/blockViews.ts'
export { beginsLikeBlock, blockAmong, type Embedded, filesInPdf, isPdf, MOST_BYTES, MOST_UNPACKED } from './printing/pdfAttachments.ts'
export type { PrintTools } from './printing/pdfLibrary.ts'
export { type Edition, EDITIONS, type Paper, PAPER_NAMES, PAPERS, SINGLE_PAGES, type SinglePage, usualPaper } from './printing/paper.ts'

/** What German says for each message; it is loaded when somebody chooses German. */
export const germanWords = async (): Promise<Words> => (await import('./words/german.ts')).germanMessages
