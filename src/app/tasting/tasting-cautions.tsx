import { useLiveQuery } from 'dexie-react-hooks'
import { CautionWords } from '@/app/kit/page/caution-words.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import styles from '@/app/tasting/seat/tasting.module.css'

const topics = ['allergens', 'raw-dough', 'chilled-food'] as const

/** Allergen and raw-dough cautions, before a first tasting; afterwards they stay in every report. */
export function TastingCautions() {
  const { notebook } = useServices()
  const settings = useLiveQuery(() => notebook.settings(), [notebook])
  if (!settings || settings.cautionsSeen.includes('tasting')) return null
  const seen = () => notebook.keepSettings({ cautionsSeen: [...settings.cautionsSeen, 'tasting'] })
  return (
    <Notice kind="caution" title="Before the first tasting">
      <div className={styles.stack}>
        <CautionWords topics={topics} />
        <Button onPress={seen}>Everyone was asked</Button>
      </div>
    </Notice>
  )
}
