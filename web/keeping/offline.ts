/**
 * Lets the app open without a network after the first visit, and announces a newer version when it is ready.
 *
 * Out     whether a newer version is waiting. It is installed only when the maker says so, after the last edit has been saved.
 */
import { create } from 'zustand'

/** Milliseconds between checks for a newer version, while the page stays open. */
const UPDATE_INTERVAL = 3_600_000

const useWaiting = create<ServiceWorker | null>(() => null)

/** Does nothing during development, where each change has to show at once. */
export async function registerOfflineWorker(): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return
  try {
    const registration = await navigator.serviceWorker.register('./offline.js', { updateViaCache: 'none' })
    offer(registration)
    registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', () => offer(registration)))
    setInterval(() => void registration.update().catch(() => {}), UPDATE_INTERVAL)
  } catch {
    // Without it the app works as long as there is a network.
  }
}

/** The first version of all does not have to wait. */
function offer({ waiting: next }: ServiceWorkerRegistration): void {
  useWaiting.setState(navigator.serviceWorker.controller === null ? null : next, true)
}

export const useNewVersionReady = (): boolean => useWaiting() !== null

export function installNewVersion(): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), { once: true })
  useWaiting.getState()?.postMessage('take over')
}
