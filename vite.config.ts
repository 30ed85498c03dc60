import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { offline } from './.tools/offline.ts'
import { workers } from './.tools/workers.ts'

export default defineConfig({
  root: 'web',
  base: './',
  plugins: [workers(), react(), offline()],
  build: {
    outDir: '../dist/web',
    emptyOutDir: true,
    chunkSizeWarningLimit: 900,
    // A worker has no document to be told in what will be fetched next.
    modulePreload: { resolveDependencies: (_, files, { hostId }) => (hostId.includes('.worker-') ? [] : files) },
    // The geometry is pure: what of it only a sheet needs comes with that sheet, though all of it has one public face.
    rolldownOptions: { treeshake: { moduleSideEffects: (id) => !id.includes('/geometry/') } },
  },
})
