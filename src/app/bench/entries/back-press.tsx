import { Button } from '@/app/kit/press/button.tsx'

/** The way back from an entry, beside its main press. */
export function BackPress({ onPress }: { onPress: () => void }) {
  return (
    <Button size="bench" means="back" onPress={onPress}>
      <span>Back</span>
    </Button>
  )
}
