import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { offline } from './.tools/offline.ts'

export default defineConfig({
  root: 'web',
  base: './',
  plugins: [react(), offline()],
  // What a worker needs only sometimes is a file of its own, as on the page.
  worker: { format: 'es' },
  build: {
    outDir: '../dist/web',
    emptyOutDir: true,
    chunkSizeWarningLimit: 900,
    // The geometry is pure: what of it only a sheet needs comes with that sheet, though all of it has one public face.
    rolldownOptions: { treeshake: { moduleSideEffects: (id) => !id.includes('/geometry/') } },
  },
})
