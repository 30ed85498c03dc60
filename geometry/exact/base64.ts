/**
 * Bytes as base64 letters and back.
 *
 * Exact   nothing is lost. Letters that are no base64 throw a DOMException.
 * Source  RFC 4648, section 4; browsers, workers and Node all bring the two functions.
 */
declare function atob(letters: string): string
declare function btoa(text: string): string

/** Bytes as base64. */
export const base64Of = (bytes: Uint8Array): string => btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))

/** `=` at the end may be left out. */
export const bytesOfBase64 = (letters: string): Uint8Array<ArrayBuffer> => Uint8Array.from(atob(letters), (letter) => letter.charCodeAt(0))
