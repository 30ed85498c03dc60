/** The bytes of a photograph that a block file holds as a data URL; null where it is none that can be printed. */
const START = /^data:image\/(?:jpeg|png);base64,([A-Za-z0-9+/]+={0,2})$/
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'
const VALUES = new Map([...LETTERS].map((letter, value) => [letter, value]))

export function photographOf(url: string): Uint8Array | null {
  const text = START.exec(url)?.[1]?.replace(/=+$/, '')
  if (text === undefined) return null
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4))
  let [bits, held, at] = [0, 0, 0]
  for (const letter of text) {
    held = ((held << 6) | (VALUES.get(letter) as number)) & 0xffff
    bits += 6
    if (bits >= 8) {
      bits -= 8
      bytes[at] = (held >> bits) & 0xff
      at += 1
    }
  }
  return bytes
}
