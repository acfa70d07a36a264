import { LevelTab } from '@/app/kit/rail/level-tab.tsx'
import { levelAxis } from '@/core/figure/level-axis.ts'
import { planInForce } from '@/core/whole-trial/plan-in-force.ts'
import { toldTrial } from '@/core/whole-trial/told-trial.ts'
import type { WholeTrial } from '@/core/whole-trial/whole-trial.ts'
import { levelText } from '@/core/wording/words/level-text.ts'
import { asSentenceStart, countText } from '@/core/wording/words/list-text.ts'
import { KeptPhoto } from './kept-photo.tsx'
import { PartFold } from './part-fold.tsx'
import { photosByLevel } from './photos-of.ts'
import styles from './photos-part.module.css'

interface PhotosPartProps {
  whole: WholeTrial
  letters: ReadonlyMap<string, string>
}

/** The photos of each level that has any, in the order of the rail. */
function shownPhotos(whole: WholeTrial) {
  const { levels } = planInForce(whole)
  const photos = photosByLevel(toldTrial(whole))
  return levelAxis(levels).positions.flatMap(({ levelId }) => {
    const level = levels.find(({ id }) => id === levelId)
    const own = photos.get(levelId) ?? []
    return level && own.length > 0 ? [{ level, own }] : []
  })
}

/** The photos of the bench side by side, as one line that opens. */
export function PhotosPart({ whole, letters }: PhotosPartProps) {
  const shown = shownPhotos(whole)
  if (shown.length === 0) return null
  const count = shown.reduce((sum, { own }) => sum + own.length, 0)
  return (
    <PartFold
      title="Side by side"
      result={`${asSentenceStart(countText(count, 'photo'))} of ${countText(shown.length, 'level')}.`}
    >
      <PhotosByLevel whole={whole} letters={letters} />
    </PartFold>
  )
}

/** Whether any level has a photo to show. */
export function hasPhotos(whole: WholeTrial): boolean {
  return shownPhotos(whole).length > 0
}

/** A column a level in the order of the rail. */
export function PhotosByLevel({ whole, letters }: PhotosPartProps) {
  const { levels, factor } = planInForce(whole)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard
    <section className={styles.row} aria-label="Photos by level" tabIndex={0}>
      {shownPhotos(whole).map(({ level, own }) => (
        <div key={level.id} className={styles.level}>
          <LevelTab
            levels={levels}
            levelId={level.id}
            letter={letters.get(level.id)}
            size="small"
          />
          {own.map((photo) => (
            <KeptPhoto
              key={photo.photoId}
              photo={photo}
              level={levelText(level, factor.unitOfMeasure)}
            />
          ))}
        </div>
      ))}
    </section>
  )
}
