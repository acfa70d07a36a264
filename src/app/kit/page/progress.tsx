import { useId } from 'react'
import { Button } from '@/app/kit/press/button.tsx'
import styles from './progress.module.css'

interface ProgressProps {
  label: string
  /** 0 to 1; null while nobody knows. */
  done: number | null
  onStop?: () => unknown
}

/** Long work, how far it is, and the way to stop it. */
export function Progress({ label, done, onStop }: ProgressProps) {
  const id = useId()
  return (
    <div className={styles.progress}>
      <label htmlFor={id}>{label}</label>
      <progress id={id} {...(done === null ? {} : { value: done, max: 1 })} />
      {onStop ? (
        <Button kind="plain" size="small" onPress={onStop}>
          Stop
        </Button>
      ) : null}
    </div>
  )
}
