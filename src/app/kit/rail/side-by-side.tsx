import type { ComponentType } from 'react'
import type { PhotosBlock } from '@/core/report/report-block.ts'
import { LevelTab } from './level-tab.tsx'
import styles from './side-by-side.module.css'

interface PictureProps {
  photoId: string
  alt: string
  className?: string | undefined
  roomClassName?: string | undefined
}

interface SideBySideProps {
  block: PhotosBlock
  /** Draws a photo's picture, wherever it is kept. */
  Picture: ComponentType<PictureProps>
  /** Letters of the levels, where one session is shown. */
  letters?: ReadonlyMap<string, string> | undefined
}

/** The photos of one moment side by side: a column a level in the order of the rail, at one scale where it is known. */
export function SideBySide({ block, Picture, letters }: SideBySideProps) {
  const { title, scale, bar, columns, levels } = block
  return (
    <figure className={styles.moment}>
      <figcaption>
        <b>{title}</b> {scale}
      </figcaption>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for controls */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard */}
      <div role="group" className={styles.scroll} aria-label={title} tabIndex={0}>
        <div
          className={styles.row}
          style={{ gridTemplateColumns: `repeat(${columns.length}, minmax(8.5rem, 1fr))` }}
        >
          {columns.map(({ levelId, name, photos }) => (
            <div key={levelId} className={styles.level}>
              {levelId === null ? (
                <span>{name}</span>
              ) : (
                <LevelTab
                  levels={levels}
                  levelId={levelId}
                  letter={letters?.get(levelId)}
                  size="small"
                />
              )}
              {photos.map(({ photoId, share, text, alt }) => (
                <div key={photoId}>
                  <div style={{ inlineSize: `${100 * (share ?? 1)}%` }}>
                    <Picture
                      photoId={photoId}
                      alt={alt}
                      className={styles.picture}
                      roomClassName={styles.room}
                    />
                  </div>
                  <span className={styles.says}>{text}</span>
                </div>
              ))}
            </div>
          ))}
          {bar ? (
            <div>
              <div className={styles.bar} style={{ inlineSize: `${100 * bar.share}%` }}>
                {bar.text}
              </div>
            </div>
          ) : null}
        </div>
      </div>
    </figure>
  )
}
