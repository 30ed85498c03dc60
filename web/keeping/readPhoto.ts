/**
 * Reads a photograph that the maker picked. It never leaves this computer.
 *
 * In      an image file.
 * Out     its pixels, scaled down; or the photograph as a JPEG small enough for a block file; or a message if it is not a picture.
 */
import { LONGEST_PHOTO, meanColour } from '../../geometry/index.ts'
import { t } from '../words/words.ts'
import { shortName } from '../document/blockNames.ts'

/** The longest side in pixels: for finding colours, and for showing a fabric. */
const PALETTE_PIXELS = 200
const FABRIC_PIXELS = 512
/** The same for a step of the booklet, which is printed as wide as a page. */
const STEP_PIXELS = 1200

type PhotoResult<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly message: string }

interface FabricPhoto {
  /** `data:image/jpeg;base64,…` */
  readonly photo: string
  readonly colour: string
}

export const photoPixels = (file: File): Promise<PhotoResult<Uint8ClampedArray>> => drawScaled(file, PALETTE_PIXELS, pixelsOf)

export const fabricPhoto = (file: File): Promise<PhotoResult<FabricPhoto>> =>
  drawScaled(file, FABRIC_PIXELS, (canvas) => {
    const colour = meanColour(pixelsOf(canvas))
    return { photo: jpegOf(fillWhite(canvas)), colour }
  })

export const stepPhoto = (file: File): Promise<PhotoResult<string>> => drawScaled(file, STEP_PIXELS, (canvas) => canvas.toDataURL('image/jpeg', 0.85))

function pixelsOf(canvas: HTMLCanvasElement): Uint8ClampedArray {
  return (canvas.getContext('2d') as CanvasRenderingContext2D).getImageData(0, 0, canvas.width, canvas.height).data
}

async function drawScaled<T>(file: File, longestSide: number, take: (canvas: HTMLCanvasElement) => T): Promise<PhotoResult<T>> {
  let bitmap: ImageBitmap
  try {
    bitmap = await createImageBitmap(file)
  } catch {
    return {
      ok: false,
      message: t('This browser can’t read {name} as a picture. Use a photo such as a JPEG or PNG.', { name: shortName(file.name) }),
    }
  }
  const scale = Math.min(1, longestSide / Math.max(bitmap.width, bitmap.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(bitmap.width * scale))
  canvas.height = Math.max(1, Math.round(bitmap.height * scale))
  const context = canvas.getContext('2d') as CanvasRenderingContext2D
  // Transparent parts would come out black.
  context.fillStyle = '#fff'
  context.fillRect(0, 0, canvas.width, canvas.height)
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height)
  bitmap.close()
  return { ok: true, value: take(canvas) }
}

/** Fills transparent parts with white, because a JPEG cannot have any. */
function fillWhite(canvas: HTMLCanvasElement): HTMLCanvasElement {
  const context = canvas.getContext('2d') as CanvasRenderingContext2D
  context.globalCompositeOperation = 'destination-over'
  context.fillStyle = '#ffffff'
  context.fillRect(0, 0, canvas.width, canvas.height)
  return canvas
}

function jpegOf(canvas: HTMLCanvasElement): string {
  for (const quality of [0.85, 0.7, 0.5]) {
    const photo = canvas.toDataURL('image/jpeg', quality)
    if (photo.length <= LONGEST_PHOTO) return photo
  }
  return canvas.toDataURL('image/jpeg', 0.2)
}
