import { useEffect, useState } from 'react'
import { useWatched } from '@/app/kit/press/use-watched.ts'

/** Takes files dropped anywhere on the page; true while some hang over it. */
export function useDropFiles(onFiles: (files: File[]) => Promise<void>): boolean {
  const [over, setOver] = useState(false)
  const watch = useWatched()
  useEffect(() => {
    const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false
    const drag = (event: DragEvent) => {
      if (!holdsFiles(event)) return
      event.preventDefault()
      setOver(true)
    }
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false)
    }
    const drop = (event: DragEvent) => {
      if (!holdsFiles(event)) return
      event.preventDefault()
      setOver(false)
      watch(onFiles(Array.from(event.dataTransfer?.files ?? [])))
    }
    window.addEventListener('dragover', drag)
    window.addEventListener('dragleave', leave)
    window.addEventListener('drop', drop)
    return () => {
      window.removeEventListener('dragover', drag)
      window.removeEventListener('dragleave', leave)
      window.removeEventListener('drop', drop)
    }
  }, [onFiles, watch])
  return over
}
