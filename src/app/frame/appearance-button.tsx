import { useLiveQuery } from 'dexie-react-hooks'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { type AppearanceSetting, showAppearance } from './appearance.ts'

const following: Record<AppearanceSetting, AppearanceSetting> = {
  system: 'light',
  light: 'dark',
  dark: 'system',
}

const words: Record<AppearanceSetting, string> = {
  system: 'as the device',
  light: 'light',
  dark: 'dark',
}

/** Steps through light, dark and whatever the device says; kept in the settings. */
export function AppearanceButton() {
  const { notebook } = useServices()
  const settings = useLiveQuery(() => notebook.settings(), [notebook])
  const now = settings?.appearance ?? 'system'
  return (
    <Button
      kind="quiet"
      size="small"
      label={`Appearance: ${words[now]}. Change to ${words[following[now]]}`}
      onPress={async () => {
        showAppearance(following[now])
        await notebook.keepSettings({ appearance: following[now] })
      }}
    >
      <svg aria-hidden="true" width="18" height="18" viewBox="0 0 18 18">
        <circle cx="9" cy="9" r="7" fill="none" stroke="currentColor" strokeWidth="1.6" />
        {now === 'light' ? null : (
          <path
            d={now === 'dark' ? 'M9 2a7 7 0 0 0 0 14a7 7 0 0 0 0-14' : 'M9 2a7 7 0 0 0 0 14z'}
            fill="currentColor"
          />
        )}
      </svg>
    </Button>
  )
}
