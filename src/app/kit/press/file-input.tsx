import type { RefObject } from 'react'
import { useWatched } from './use-watched.ts'

export interface FileInputProps {
  /** For the press that opens the chooser, by `click()`. */
  input: RefObject<HTMLInputElement | null>
  /** What the chooser offers, such as ".json". */
  accept: string
  onFiles: (files: File[]) => unknown
  multiple?: boolean | undefined
  capture?: 'environment' | undefined
}

/** The device's own chooser of files, out of sight. The same file may be chosen twice in a row. */
export function FileInput({ input, accept, onFiles, multiple, capture }: FileInputProps) {
  const watch = useWatched()
  return (
    <input
      ref={input}
      type="file"
      hidden
      accept={accept}
      multiple={multiple}
      capture={capture}
      onChange={(change) => {
        const files = Array.from(change.target.files ?? [])
        change.target.value = ''
        if (files.length > 0) watch(onFiles(files))
      }}
    />
  )
}
