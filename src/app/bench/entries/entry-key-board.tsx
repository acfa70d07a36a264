import { useState } from 'react'
import styles from '@/app/bench/bench.module.css'
import { Button } from '@/app/kit/press/button.tsx'
import { type EntryKind, entryNames, keysInFront } from '@/core/session/press/entry-kinds.ts'

interface EntryKeyBoardProps {
  keys: readonly EntryKind[]
  onPick: (kind: EntryKind) => void
}

/** The four likeliest entries as big keys; the rest one press away. */
export function EntryKeyBoard({ keys, onPick }: EntryKeyBoardProps) {
  const [all, setAll] = useState(false)
  return (
    <div>
      <div className={styles.pair}>
        {(all ? keys : keys.slice(0, keysInFront)).map((kind) => (
          <Button key={kind} size="bench" onPress={() => onPick(kind)}>
            {entryNames[kind]}
          </Button>
        ))}
      </div>
      {keys.length > keysInFront ? (
        <Button kind="quiet" size="bench" expanded={all} onPress={() => setAll(!all)}>
          {all ? 'Fewer' : 'More to log'}
        </Button>
      ) : null}
    </div>
  )
}
