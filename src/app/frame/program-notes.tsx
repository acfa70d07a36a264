import { useStore } from 'zustand'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { offline } from '@/app/services/offline.ts'

/** A newer version that waits: offered, never forced. What is typed is kept before the page opens anew. */
export function ProgramNotes() {
  const update = useStore(offline, (state) => state.update)
  const taken = useStore(offline, (state) => state.taken)
  if (taken)
    return (
      <Notice kind="caution" title="Another window has taken a newer version">
        <p>This page still runs the older one. Reload it before you go on.</p>
        <Button onPress={() => window.location.reload()}>Reload</Button>
      </Notice>
    )
  if (!update) return null
  return (
    <Notice kind="know" title="A newer version is ready">
      <p>It can wait until the day’s work is done; until then this page goes on as it is.</p>
      <Button onPress={update}>Take it now</Button>{' '}
      <Button kind="quiet" onPress={() => offline.setState({ update: null })}>
        Later
      </Button>
    </Notice>
  )
}
