/**
 * Puts the worker that keeps the app in the browser beside the built app, with the list of all files of this version.
 *
 * The version is a digest of what is in them: two builds of the same sources are the same version.
 */
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { build } from 'esbuild'
import type { Plugin } from 'vite'

const SOURCE = 'web/offline/worker.ts'
const PUBLIC = 'web/public'

export function offline(): Plugin {
  return {
    name: 'offline',
    apply: 'build',
    enforce: 'post',
    async generateBundle(_, bundle) {
      const digest = createHash('sha256')
      const files = [...Object.keys(bundle), ...publicFiles()].filter((file) => !file.endsWith('.map')).sort()
      for (const file of files) digest.update(file).update(contentOf(file, bundle))
      const { outputFiles } = await build({
        entryPoints: [SOURCE],
        bundle: true,
        write: false,
        minify: true,
        format: 'iife',
        define: { FILES: JSON.stringify(files), VERSION: JSON.stringify(digest.digest('hex').slice(0, 12)) },
      })
      this.emitFile({ type: 'asset', fileName: 'offline.js', source: outputFiles[0]?.text ?? '' })
    },
  }
}

const publicFiles = (): string[] =>
  readdirSync(PUBLIC, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(PUBLIC.length + 1))

type Bundle = Parameters<Extract<Plugin['generateBundle'], (...given: never[]) => unknown>>[1]

function contentOf(file: string, bundle: Bundle): string | Uint8Array {
  const made = bundle[file]
  if (made === undefined) return readFileSync(join(PUBLIC, file))
  return made.type === 'chunk' ? made.code : made.source
}
