/**
 * Choices that this browser remembers and that belong to no block, such as the paper size.
 *
 * A private window may refuse to remember anything. Then a setting lasts only as long as the page, and nobody needs to hear about it.
 */

/** Null if nothing was remembered under the key. */
export function readSetting(key: string): string | null {
  try {
    return localStorage.getItem(key)
  } catch {
    return null
  }
}

export function writeSetting(key: string, value: string): void {
  try {
    localStorage.setItem(key, value)
  } catch {
    // The browser remembers nothing.
  }
}
