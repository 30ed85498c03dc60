/**
 * A photograph that the maker chose, read on this machine alone.
 *
 * In      a file.
 * Out     its pixels, made small; or the photograph itself, small enough for a block file. What is no picture is said in one sentence.
 */
import { LONGEST_PHOTO, meanColour } from '../../geometry/index.ts'
import { t } from '../words/words.ts'
import { shortName } from '../document/blockNames.ts'

/** Pixels a side: enough to choose colours from, and enough to show cloth. */
const SAMPLED = 200
const SHOWN = 512
/** A step of the booklet is printed as wide as a page. */
const PRINTED = 1200

type Seen<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly message: string }

interface ClothPhoto {
  /** `data:image/jpeg;base64,…` */
  readonly photo: string
  readonly colour: string
}

export const pixelsOfPhoto = (file: File): Promise<Seen<Uint8ClampedArray>> => drawn(file, SAMPLED, pixelsIn)

export const photoOfCloth = (file: File): Promise<Seen<ClothPhoto>> =>
  drawn(file, SHOWN, (canvas) => {
    const colour = meanColour(pixelsIn(canvas))
    return { photo: smallEnough(onPaper(canvas)), colour }
  })

export const photoOfStep = (file: File): Promise<Seen<string>> => drawn(file, PRINTED, (canvas) => canvas.toDataURL('image/jpeg', 0.85))

function pixelsIn(canvas: HTMLCanvasElement): Uint8ClampedArray {
  return (canvas.getContext('2d') as CanvasRenderingContext2D).getImageData(0, 0, canvas.width, canvas.height).data
}

async function drawn<T>(file: File, most: number, take: (canvas: HTMLCanvasElement) => T): Promise<Seen<T>> {
  let bitmap: ImageBitmap
  try {
    bitmap = await createImageBitmap(file)
  } catch {
    return {
      ok: false,
      message: t('{name} is no picture this browser can read; choose a photograph such as a JPEG or PNG.', { name: shortName(file.name) }),
    }
  }
  const scale = Math.min(1, most / Math.max(bitmap.width, bitmap.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(bitmap.width * scale))
  canvas.height = Math.max(1, Math.round(bitmap.height * scale))
  const paper = canvas.getContext('2d') as CanvasRenderingContext2D
  // What a picture leaves clear would come out black.
  paper.fillStyle = '#fff'
  paper.fillRect(0, 0, canvas.width, canvas.height)
  paper.drawImage(bitmap, 0, 0, canvas.width, canvas.height)
  bitmap.close()
  return { ok: true, value: take(canvas) }
}

/** A JPEG has no holes: what can be seen through becomes white. */
function onPaper(canvas: HTMLCanvasElement): HTMLCanvasElement {
  const pen = canvas.getContext('2d') as CanvasRenderingContext2D
  pen.globalCompositeOperation = 'destination-over'
  pen.fillStyle = '#ffffff'
  pen.fillRect(0, 0, canvas.width, canvas.height)
  return canvas
}

function smallEnough(canvas: HTMLCanvasElement): string {
  for (const quality of [0.85, 0.7, 0.5]) {
    const photo = canvas.toDataURL('image/jpeg', quality)
    if (photo.length <= LONGEST_PHOTO) return photo
  }
  return canvas.toDataURL('image/jpeg', 0.2)
}
