/**
 * Makes the command: geometry/cli.ts and all it reads, as files that Node 20 runs; what only printing needs lies in files of its own beside it,
 * loaded when somebody prints. Plain JavaScript, since it runs while the project is being installed.
 *
 * In      where to; `dist` unless another folder is named.
 */
import { chmodSync, copyFileSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const outdir = process.argv[2] ?? 'dist'
const home = fileURLToPath(new URL('..', import.meta.url))
const { version } = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8'))
const installed = (path) => join(home, 'node_modules', path)

mkdirSync(join(outdir, 'faces'), { recursive: true })
for (const name of readdirSync(outdir)) if (/^nestwright-.*\.js$/.test(name)) rmSync(join(outdir, name))
await build({
  entryPoints: { nestwright: join(home, 'geometry/cli.ts') },
  outdir,
  bundle: true,
  splitting: true,
  chunkNames: 'nestwright-[name]-[hash]',
  platform: 'node',
  format: 'esm',
  target: 'node20',
  define: { NESTWRIGHT_VERSION: JSON.stringify(version) },
  logLevel: 'warning',
  // The page's build of the library packs streams by itself and not by Node: so page and command print the same bytes.
  alias: { pdfkit: installed('pdfkit/js/pdfkit.browser.mjs') },
})
for (const [face, file] of [
  ['text', '400Regular/Inter_400Regular.ttf'],
  ['strong', '600SemiBold/Inter_600SemiBold.ttf'],
])
  copyFileSync(installed(`@expo-google-fonts/inter/${file}`), join(outdir, 'faces', `${face}.ttf`))
chmodSync(join(outdir, 'nestwright.js'), 0o755)
