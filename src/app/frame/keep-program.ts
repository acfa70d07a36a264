import type { registerSW } from 'virtual:pwa-register'
import { offline } from '@/app/services/offline.ts'

const hourMilliseconds = 3_600_000
const handOverMilliseconds = 4000

/** What of the window it works with. */
interface Page {
  container: Pick<ServiceWorkerContainer, 'controller' | 'addEventListener'>
  reload: () => void
}

/**
 * Has the browser keep the program itself, so that every place opens without a network after the first visit. A newer
 * version is fetched beside the one in use and waits until a person takes it, in this window alone: in every other one it is told of, and that goes on as it is.
 */
export function keepProgram(register: typeof registerSW, { container, reload }: Page): void {
  let asked = false
  const take = register({
    // The library would open every window anew that was shown the offer, one at the oven or at a seat too.
    onNeedReload: () => {
      if (asked) reload()
    },
    onNeedRefresh: () =>
      offline.setState({
        update: async () => {
          asked = true
          await take(true)
          // Opened anew as soon as the newer version is in charge; where the browser is slow to hand over, by us.
          setTimeout(reload, handOverMilliseconds)
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
  // On a first visit the first to take charge is the version of this page.
  let before = container.controller
  container.addEventListener('controllerchange', () => {
    if (before && !asked) offline.setState({ taken: true })
    before = container.controller
  })
}
