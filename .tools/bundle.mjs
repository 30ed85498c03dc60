/**
 * Makes the command: geometry/cli.ts and all it reads, as one file that Node 20 runs.
 * Plain JavaScript, since it runs while the project is being installed.
 */
import { chmodSync } from 'node:fs'
import { build } from 'esbuild'

const outfile = 'dist/nestwright.js'
await build({ entryPoints: ['geometry/cli.ts'], outfile, bundle: true, platform: 'node', format: 'esm', target: 'node20', logLevel: 'warning' })
chmodSync(outfile, 0o755)
