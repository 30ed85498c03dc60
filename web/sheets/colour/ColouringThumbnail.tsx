/** A small picture of one colouring of a page. */
import { type ColouringPage, coloursOf, type Fabric, type JudgedColouring } from '../../../geometry/index.ts'
import { type BlockOutlines, ColouringPicture, patchKey } from '../../drawing/ColouringPicture.tsx'

export interface ThumbnailProps {
  readonly id: string
  readonly outlines: BlockOutlines
  readonly page: ColouringPage
  readonly fabrics: readonly Fabric[]
  readonly colouring: JudgedColouring
}

export function ColouringThumbnail({ id, outlines, page, fabrics, colouring }: ThumbnailProps) {
  const colours = new Map(coloursOf(page, colouring).map(({ unit, name, fabric }) => [patchKey(unit, name), fabric]))
  return <ColouringPicture id={id} outlines={outlines} fabrics={fabrics} colours={colours} />
}
