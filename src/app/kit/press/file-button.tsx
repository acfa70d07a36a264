import { useRef } from 'react'
import { Button, type ButtonKind, type ButtonSize } from './button.tsx'
import { useWatched } from './use-watched.ts'

interface FileButtonProps {
  children: React.ReactNode
  /** What the chooser offers, such as ".json". */
  accept: string
  onFiles: (files: File[]) => unknown
  multiple?: boolean
  capture?: 'environment'
  kind?: ButtonKind
  size?: ButtonSize
  label?: string
}

/** A press that lets a person choose files. The same file may be chosen twice in a row. */
export function FileButton(props: FileButtonProps) {
  const ref = useRef<HTMLInputElement>(null)
  const watch = useWatched()
  return (
    <>
      <input
        ref={ref}
        type="file"
        hidden
        accept={props.accept}
        multiple={props.multiple}
        capture={props.capture}
        onChange={(change) => {
          const files = Array.from(change.target.files ?? [])
          change.target.value = ''
          if (files.length > 0) watch(props.onFiles(files))
        }}
      />
      <Button
        {...(props.kind ? { kind: props.kind } : {})}
        {...(props.size ? { size: props.size } : {})}
        {...(props.label ? { label: props.label } : {})}
        onPress={() => ref.current?.click()}
      >
        {props.children}
      </Button>
    </>
  )
}
