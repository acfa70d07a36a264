import { useRef } from 'react'
import { Button, type ButtonKind, type ButtonSize } from './button.tsx'
import { FileInput, type FileInputProps } from './file-input.tsx'

interface FileButtonProps extends Omit<FileInputProps, 'input'> {
  children: React.ReactNode
  kind?: ButtonKind
  size?: ButtonSize
  label?: string
}

/** A press that lets a person choose files. */
export function FileButton({ children, kind, size, label, ...files }: FileButtonProps) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <FileInput input={input} {...files} />
      <Button
        {...(kind ? { kind } : {})}
        {...(size ? { size } : {})}
        {...(label ? { label } : {})}
        onPress={() => input.current?.click()}
      >
        {children}
      </Button>
    </>
  )
}
