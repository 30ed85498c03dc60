import '@fontsource/inter/latin-400.css'
import '@fontsource/inter/latin-600.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './App.tsx'
import { AppErrorBoundary } from './AppErrorBoundary.tsx'
import { registerOfflineWorker } from '../keeping/offline.ts'
import { start } from '../keeping/start.ts'
import { setView } from '../document/store.ts'
import { loadLanguage, currentLanguage } from '../words/words.ts'
import '../style/light.css'
import '../style/controls.css'
import '../style/page.css'
import '../style/around.css'
import '../style/panels.css'
import '../style/tablet.css'

/** Not awaited at the top: parts that are loaded meanwhile, such as what opens a link, import from this script and would wait for it. */
async function begin(): Promise<void> {
  await Promise.all([start(), loadLanguage()])
  setView({ language: currentLanguage() })
  createRoot(document.getElementById('root') as HTMLElement).render(
    <StrictMode>
      <AppErrorBoundary>
        <App />
      </AppErrorBoundary>
    </StrictMode>,
  )
  void registerOfflineWorker()
}

void begin()
