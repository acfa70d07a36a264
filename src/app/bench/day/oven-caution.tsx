import { useLiveQuery } from 'dexie-react-hooks'
import styles from '@/app/bench/bench.module.css'
import { CautionWords } from '@/app/kit/page/caution-words.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'

const topics = ['raw-dough', 'hot-oven', 'carbon-monoxide', 'chilled-food'] as const

/**
 * The oven and dough cautions: one line from the start of a first day, whole as soon as the oven is next; once read they
 * stay in the guide and in every report.
 */
export function OvenCaution({ open }: { open: boolean }) {
  const { notebook } = useServices()
  const settings = useLiveQuery(() => notebook.settings(), [notebook])
  if (!settings || settings.cautionsSeen.includes('oven')) return null
  const seen = () => notebook.keepSettings({ cautionsSeen: [...settings.cautionsSeen, 'oven'] })
  return (
    <details className={styles.caution} open={open}>
      <summary>Before the first bake: raw dough, hot ovens, carbon monoxide</summary>
      <Notice kind="caution">
        <div className={styles.cautions}>
          <CautionWords topics={topics} />
          <Button size="bench" onPress={seen}>
            Read, and kept in mind
          </Button>
        </div>
      </Notice>
    </details>
  )
}
