/**
 * A photograph of cloth in a block file: a JPEG as a data address.
 *
 * In      text.
 * Out     its width and height in pixels, read from the JPEG's own frame header; null where it is no JPEG.
 * Source  ITU-T T.81, B.2.2: frame headers SOF0 to SOF15 but for DHT, JPG and DAC.
 */
const START = 'data:image/jpeg;base64,'
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'
/** A photograph of at most 512 pixels a side takes far less. */
export const LONGEST_PHOTO = 600_000

interface PhotoSize {
  readonly width: number
  readonly height: number
}

export function photoSize(photo: string): PhotoSize | null {
  if (!photo.startsWith(START) || photo.length > LONGEST_PHOTO || !/^[A-Za-z0-9+/]+={0,2}$/.test(photo.slice(START.length))) return null
  const byte = (at: number): number => byteAt(photo, at)
  if (byte(0) !== 0xff || byte(1) !== 0xd8) return null
  const bytes = Math.floor(((photo.length - START.length) * 3) / 4)
  for (let at = 2; at + 8 < bytes; ) {
    if (byte(at) !== 0xff) return null
    const marker = byte(at + 1)
    const word = (place: number): number => byte(place) * 256 + byte(place + 1)
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) {
      const [height, width] = [word(at + 5), word(at + 7)]
      return width > 0 && height > 0 ? { width, height } : null
    }
    at += 2 + word(at + 2)
  }
  return null
}

/** Four letters hold three bytes. */
function byteAt(photo: string, at: number): number {
  const first = START.length + Math.floor(at / 3) * 4
  const letter = (place: number): number => Math.max(0, LETTERS.indexOf(photo[first + place] ?? 'A'))
  if (at % 3 === 0) return (letter(0) << 2) | (letter(1) >> 4)
  if (at % 3 === 1) return ((letter(1) & 15) << 4) | (letter(2) >> 2)
  return ((letter(2) & 3) << 6) | letter(3)
}
