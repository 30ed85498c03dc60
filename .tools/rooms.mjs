/**
 * Who imports whom, held against the table in `.dependency-cruiser.mjs`. Prints each violation; exit status 1 where there is one.
 *
 * In      folders to read, below the folder it is started in; `geometry` and `web` unless others are named.
 */
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'

// The linter's parser takes TypeScript without JSX: a `.tsx` file has to say so.
const swc = createRequire(import.meta.url)('@swc/core')
const { parseFileSync } = swc
swc.parseFileSync = (file, options) => parseFileSync(file, { ...options, tsx: file.endsWith('.tsx') })

const { cruise } = await import('dependency-cruiser')
const { default: extractOptions } = await import('dependency-cruiser/config-utl/extract-depcruise-options')

const folders = process.argv.length > 2 ? process.argv.slice(2) : ['geometry', 'web']
const { output } = await cruise(folders, {
  ...(await extractOptions(fileURLToPath(new URL('../.dependency-cruiser.mjs', import.meta.url)))),
  outputType: 'json',
})
const { summary } = JSON.parse(output)
for (const { from, to, rule } of summary.violations) console.log(`${from} imports ${to}: ${rule.name}`)
console.log(`${summary.totalCruised} files, ${summary.totalDependenciesCruised} imports, ${summary.violations.length} violations`)
process.exitCode = summary.violations.length === 0 && summary.totalCruised > 0 ? 0 : 1
