/**
 * Opens without a network after the first visit, and tells when a newer version is ready.
 *
 * Out     whether one waits; it takes over when the maker says so, after the last edit has been kept, and never by itself.
 */
import { create } from 'zustand'

/** Milliseconds between looks for a newer version, while the page stays open. */
const OFTEN = 3_600_000

const useWaiting = create<ServiceWorker | null>(() => null)

/** Not while the app is being developed: there each change is shown at once. */
export async function beginOffline(): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return
  try {
    const registration = await navigator.serviceWorker.register('./offline.js', { updateViaCache: 'none' })
    offer(registration)
    registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', () => offer(registration)))
    setInterval(() => void registration.update().catch(() => {}), OFTEN)
  } catch {
    // Without it the app works as long as there is a network.
  }
}

/** The very first version has nobody to wait for. */
function offer({ waiting: next }: ServiceWorkerRegistration): void {
  useWaiting.setState(navigator.serviceWorker.controller === null ? null : next, true)
}

export const useNewer = (): boolean => useWaiting() !== null

export function takeNewer(): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), { once: true })
  useWaiting.getState()?.postMessage('take over')
}
