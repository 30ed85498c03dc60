/** Every sentence that the screen says, read out of the sources: the first text of `t` and `label`, the second of `tn`. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const TEXT = /'((?:[^'\\\n]|\\.)*)'/.source
const CALLS = [new RegExp(`\\b(?:t|label)\\(\\s*${TEXT}`, 'g'), new RegExp(`\\btn\\([^']*?${TEXT}\\s*,\\s*${TEXT}`, 'g')]

export function wordsUsed(folder = 'web'): ReadonlySet<string> {
  const found = new Set<string>()
  for (const file of sources(folder)) {
    const text = readFileSync(file, 'utf8')
    for (const call of CALLS) for (const [, first, second] of text.matchAll(call)) found.add(unescaped(second ?? (first as string)))
  }
  return found
}

const unescaped = (text: string): string => text.replace(/\\(.)/g, '$1')

function sources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) return sources(path)
    return /\.tsx?$/.test(entry.name) ? [path] : []
  })
}
