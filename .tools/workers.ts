/**
 * Builds what runs beside the page together with the page: what both need is one file, fetched once.
 *
 * In      `new Worker(new URL('./name.worker.ts', import.meta.url), { type: 'module' })`, as the development server takes it too.
 * Out     the same, with the address of an entry of the same build.
 */
import type { Plugin } from 'vite'

const WORKER = /new URL\('(\.[^']+\.worker\.ts)', import\.meta\.url\)/g

export function workers(): Plugin {
  return {
    name: 'workers',
    apply: 'build',
    enforce: 'pre',
    async transform(code, id) {
      const found = [...code.matchAll(WORKER)]
      if (found.length === 0) return null
      let made = code
      for (const [words, path] of found) {
        const entry = await this.resolve(path as string, id)
        if (entry === null) this.error(`${path} is not there`)
        const file = this.emitFile({ type: 'chunk', id: entry.id })
        made = made.replace(words, `import.meta.ROLLUP_FILE_URL_${file}`)
      }
      return { code: made, map: null }
    },
  }
}
