/** A small picture of one of the quilt's blocks, as the quilt wears it, in the middle of a square. */
import { useEffect, useRef } from 'react'
import { blockFinished, type Quilt } from '../../geometry/index.ts'
import { useDecodedPhotos } from '../drawing/fabricPattern.ts'
import { blockPicture } from '../drawing/quiltPainting.ts'

interface Props {
  readonly quilt: Quilt
  readonly id: string
  /** Pixels. */
  readonly side: number
  readonly turn?: number
}

export function QuiltBlockPicture({ quilt, id, side, turn = 0 }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const decoded = useDecodedPhotos()
  // biome-ignore lint/correctness/useExhaustiveDependencies: a decoded photograph has to be painted
  useEffect(() => {
    const block = quilt.blocks.find((one) => one.id === id)?.block
    if (canvas.current === null || block === undefined) return
    const size = Math.round(side * Math.min(3, window.devicePixelRatio || 1))
    const [wide, high] = blockFinished(block)
    const picture = blockPicture(quilt, id, size / Math.max(wide, high))
    const pen = canvas.current.getContext('2d')
    if (picture === null || pen === null) return
    canvas.current.width = size
    canvas.current.height = size
    pen.translate(size / 2, size / 2)
    pen.rotate((turn * Math.PI) / 2)
    pen.drawImage(picture, -picture.width / 2, -picture.height / 2)
  }, [quilt, id, side, turn, decoded])
  return (
    <span className="blockpicture" style={{ width: side, height: side }} aria-hidden="true">
      <canvas ref={canvas} style={{ width: side, height: side }} />
    </span>
  )
}
