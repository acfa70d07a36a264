import { type DragEvent, type ReactNode, useState } from 'react'
import { useWatched } from '@/app/kit/press/use-watched.ts'
import styles from './drop-box.module.css'

interface DropBoxProps {
  onFiles: (files: File[]) => Promise<void>
  children: ReactNode
}

/** A part of the page that takes files dropped on it, and shows while some hang over it that it would. */
export function DropBox({ onFiles, children }: DropBoxProps) {
  const [over, setOver] = useState(false)
  const watch = useWatched()
  const drag = (event: DragEvent) => {
    if (!event.dataTransfer.types.includes('Files')) return
    event.preventDefault()
    setOver(true)
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way; the button inside does the same by keyboard
    <div
      className={over ? `${styles.box} ${styles.over}` : styles.box}
      onDragOver={drag}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault()
        setOver(false)
        watch(onFiles(Array.from(event.dataTransfer.files)))
      }}
    >
      {children}
    </div>
  )
}
