import { registerSW } from 'virtual:pwa-register'
import { offline } from '@/app/services/offline.ts'

const hourMilliseconds = 3_600_000
const handOverMilliseconds = 4000

/**
 * Has the browser keep the program itself, so that every place opens without a network after the first visit. A newer
 * version is fetched beside the one in use and waits until a person takes it; another window that took it is told of.
 */
export function keepProgram(): void {
  let asked = false
  const take = registerSW({
    onNeedRefresh: () =>
      offline.setState({
        update: async () => {
          asked = true
          await take(true)
          // Opened anew by the library as soon as the newer version is in charge; where the browser is slow to hand over, by us.
          setTimeout(() => window.location.reload(), handOverMilliseconds)
        },
      }),
    onOfflineReady: () => offline.setState({ ready: true }),
    onRegisteredSW: (_, registration) => {
      if (!registration) return
      offline.setState({ ready: registration.active !== null })
      // Without a network there is nothing newer to find; the next hour asks again.
      setInterval(() => void registration.update().catch(() => undefined), hourMilliseconds)
    },
    onRegisterError: (cause: unknown) => offline.setState({ failure: String(cause) }),
  })
  const before = navigator.serviceWorker.controller
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (before && !asked) offline.setState({ taken: true })
  })
}
