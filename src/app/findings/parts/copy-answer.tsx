import { useState } from 'react'
import { TextArea } from '@/app/kit/field/text-area.tsx'
import { Button } from '@/app/kit/press/button.tsx'

/** Puts the answer where it can be pasted into a message; where the browser keeps the clipboard to itself, the text stands there to be marked. */
export function CopyAnswer({ text }: { text: string }) {
  const [came, setCame] = useState<{ of: string; copied: boolean } | null>(null)
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text)
      setCame({ of: text, copied: true })
    } catch {
      // No clipboard for this page, or not allowed: the same text is shown.
      setCame({ of: text, copied: false })
    }
  }
  const now = came?.of === text ? came : null
  return (
    <div>
      <Button kind="quiet" onPress={copy}>
        Copy the answer
      </Button>{' '}
      <span role="status">{now?.copied ? 'Copied: question, answer, what to bake.' : ''}</span>
      {now && !now.copied ? (
        <TextArea
          label="The answer, to be marked and copied"
          value={text}
          onValue={() => undefined}
        />
      ) : null}
    </div>
  )
}
