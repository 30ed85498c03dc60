/**
 * How large a picture in a block file says it is, before anything unpacks it.
 *
 * In      a JPEG or a PNG as a data address.
 * Out     width and height in pixels, from the picture's own header: 0 where it says so; null where it has no such header.
 * Source  JPEG: ITU-T T.81, B.2.2, frame headers SOF0 to SOF15 but for DHT, JPG and DAC. PNG: ISO/IEC 15948, 5.2 and 11.2.2.
 */
const JPEG = 'data:image/jpeg;base64,'
const PNG = 'data:image/png;base64,'
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'
/** Letters; a fabric's photograph of at most 512 pixels a side takes far less. */
export const LONGEST_PHOTO = 600_000
/** More than a page shows of a photograph; unpacking many more takes gigabytes. */
export const MOST_PIXELS = 25_000_000

interface PictureSize {
  readonly width: number
  readonly height: number
}

/** The size of a fabric's photograph: a JPEG, not too long; null where it is none or empty. */
export function photoSize(photo: string): PictureSize | null {
  if (!photo.startsWith(JPEG) || photo.length > LONGEST_PHOTO || !/^[A-Za-z0-9+/]+={0,2}$/.test(photo.slice(JPEG.length))) return null
  const size = pictureSize(photo)
  return size === null || size.width === 0 || size.height === 0 ? null : size
}

export function pictureSize(picture: string): PictureSize | null {
  if (picture.startsWith(JPEG)) return jpegSize(bytesFrom(picture, JPEG.length))
  return picture.startsWith(PNG) ? pngSize(bytesFrom(picture, PNG.length)) : null
}

/** Single bytes of base64, so that a long picture is not unpacked for its header. */
interface Bytes {
  readonly count: number
  readonly at: (place: number) => number
}

const word = ({ at }: Bytes, place: number): number => at(place) * 256 + at(place + 1)

function jpegSize(bytes: Bytes): PictureSize | null {
  if (word(bytes, 0) !== 0xffd8) return null
  for (let at = 2; at + 8 < bytes.count; ) {
    if (bytes.at(at) !== 0xff) return null
    const marker = bytes.at(at + 1)
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) return { width: word(bytes, at + 7), height: word(bytes, at + 5) }
    at += 2 + word(bytes, at + 2)
  }
  return null
}

/** The signature, then the length and the name of the first chunk, IHDR. */
const PNG_START = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52]

function pngSize(bytes: Bytes): PictureSize | null {
  if (bytes.count < 24 || PNG_START.some((byte, place) => bytes.at(place) !== byte)) return null
  const side = (place: number): number => word(bytes, place) * 65_536 + word(bytes, place + 2)
  return { width: side(16), height: side(20) }
}

/** Four letters hold three bytes. */
function bytesFrom(picture: string, start: number): Bytes {
  const letter = (place: number): number => Math.max(0, LETTERS.indexOf(picture[place] ?? 'A'))
  return {
    count: Math.floor(((picture.length - start) * 3) / 4),
    at: (place) => {
      const first = start + Math.floor(place / 3) * 4
      if (place % 3 === 0) return (letter(first) << 2) | (letter(first + 1) >> 4)
      if (place % 3 === 1) return ((letter(first + 1) & 15) << 4) | (letter(first + 2) >> 2)
      return ((letter(first + 2) & 3) << 6) | letter(first + 3)
    },
  }
}
