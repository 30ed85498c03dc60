import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { offline } from './.tools/offline.ts'
import { workers } from './.tools/workers.ts'

/**
 * What the page always loads and no worker ever does, in one chunk: by itself the bundler makes a small one of everything that a later sheet uses too,
 * and many small ones are compressed less well. What workers import must stay out, or they would load all of the page; and all that imports from in here
 * at first must be in here too, or it would run before what it needs.
 */
const PAGE = {
  name: 'page',
  tags: ['$initial' as const],
  test: /[\\/]web[\\/](app|board|controls|document|drawing|keeping|library|sheets|tray|views|words|workers[\\/](clients|derive|use\w+|workerClient)\.)|[\\/]node_modules[\\/](idb|konva|react|react-dom|scheduler|zustand)[\\/]/,
  includeDependenciesRecursively: false,
}

export default defineConfig({
  root: 'web',
  base: './',
  plugins: [workers(), react(), offline()],
  build: {
    outDir: '../dist/web',
    emptyOutDir: true,
    chunkSizeWarningLimit: 900,
    // What a later sheet needs is not listed in the first script: the list would weigh more than it saves, and a worker has no document to put it in.
    modulePreload: { resolveDependencies: (_, files, { hostType }) => (hostType === 'html' ? files : []) },
    // The geometry is pure: what of it only a sheet needs comes with that sheet, though all of it has one public face.
    rolldownOptions: {
      treeshake: { moduleSideEffects: (id) => !id.includes('/geometry/') },
      // Hundreds of imports name these files, and a hash cannot be compressed: short names keep a first visit light.
      output: {
        chunkFileNames: ({ name }) => (name.includes('.worker') ? 'assets/[name]-[hash].js' : 'assets/[hash].js'),
        codeSplitting: { groups: [PAGE] },
      },
    },
  },
})
