/** The bytes of a photograph that a block file holds as a data URL; null where it is none that can be printed. */
import { bytesOfBase64 } from '../exact/base64.ts'

const START = /^data:image\/(?:jpeg|png);base64,([A-Za-z0-9+/]+)={0,2}$/

export function photographOf(url: string): Uint8Array | null {
  const letters = START.exec(url)?.[1]
  // One letter beyond whole fours holds no whole byte.
  return letters === undefined || letters.length % 4 === 1 ? null : bytesOfBase64(letters)
}
