import { useLiveQuery } from 'dexie-react-hooks'
import { Link, useLocation } from 'wouter'
import { usePageMenu } from '@/app/kit/page/page-menu.ts'
import { useServices } from '@/app/services/services.ts'
import { type AppearanceSetting, showAppearance } from './appearance.ts'
import styles from './menu.module.css'
import { wayToKitchen } from './place-names.ts'

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

const waysFrom = (location: string) => [
  { href: '/', words: 'Notebook' },
  { href: wayToKitchen(location), words: 'Kitchen' },
  { href: '/about', words: 'About' },
]

/** What stands in the one menu: what the open page adds, then the ways that hold everywhere, and light or dark. */
export function MenuList({ shut }: { shut: () => void }) {
  const { groups } = usePageMenu()
  const [location] = useLocation()
  return (
    <>
      {groups.map((group) => (
        <div className={styles.group} key={group.map((entry) => entry.words).join()}>
          {group.map((entry) => (
            <button
              key={entry.words}
              type="button"
              onClick={() => {
                shut()
                entry.act()
              }}
            >
              {entry.words}
            </button>
          ))}
        </div>
      ))}
      <div className={styles.group}>
        {waysFrom(location).map((way) => (
          <Link key={way.href} href={way.href} onClick={shut}>
            {way.words}
          </Link>
        ))}
        <AppearancePress />
      </div>
    </>
  )
}

/** Steps through light, dark and whatever the device says; kept in the settings. */
function AppearancePress() {
  const { notebook } = useServices()
  const settings = useLiveQuery(() => notebook.settings(), [notebook])
  const now = settings?.appearance ?? 'system'
  return (
    <button
      type="button"
      onClick={async () => {
        showAppearance(following[now])
        await notebook.keepSettings({ appearance: following[now] })
      }}
    >
      Appearance: {words[now]}
    </button>
  )
}
