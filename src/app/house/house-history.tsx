import { Section } from '@/app/kit/page/section.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { useServices } from '@/app/services/services.ts'
import { houseChanges, revisedHouse } from '@/core/house/changed-house.ts'
import type { House } from '@/core/house/house-record.ts'
import { houseChangesText } from '@/core/wording/house/house-text.ts'
import { momentText } from '@/core/wording/words/date-text.ts'
import styles from './house.module.css'

/** Every state the house formula was in, the newest first; nothing while there is one alone. */
export function HouseHistory({ house }: { house: House }) {
  const { notebook, now, zone } = useServices()
  if (house.revisions.length < 2) return null
  const told = house.revisions.map((revision, at) => {
    const before = house.revisions[at - 1]
    return { revision, at, changed: before ? houseChanges(before, revision) : [] }
  })
  return (
    <Section title="History">
      <ol className={styles.rests} reversed>
        {told.toReversed().map(({ revision, at, changed }) => (
          <li key={at}>
            <b>{momentText(revision.at, revision.zone)}</b>
            <span className={styles.soft}>{houseChangesText(changed, revision)}</span>
            {at === house.revisions.length - 1 ? null : (
              <Button
                kind="quiet"
                size="small"
                label={`Take up the state of ${momentText(revision.at, revision.zone)} again`}
                onPress={() =>
                  notebook.keepHouse(
                    revisedHouse(house, { ...revision, at: now(), zone, note: '' }),
                  )
                }
              >
                Take it up again
              </Button>
            )}
          </li>
        ))}
      </ol>
    </Section>
  )
}
