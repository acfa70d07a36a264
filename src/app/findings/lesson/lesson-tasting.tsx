import { useState } from 'react'
import { ScalePad } from '@/app/kit/field/scale-pad.tsx'
import { Switch } from '@/app/kit/field/switch.tsx'
import { CautionWords } from '@/app/kit/page/caution-words.tsx'
import { Dialog } from '@/app/kit/page/dialog.tsx'
import { Notice } from '@/app/kit/page/notice.tsx'
import { Button } from '@/app/kit/press/button.tsx'
import { lessonScale } from '@/core/lesson/lesson.ts'
import type { Plan } from '@/core/trial/plan-record.ts'
import { coveredText } from '@/core/wording/lesson/lesson-text.ts'
import { levelNamed } from '@/core/wording/words/named-in-plan.ts'
import styles from './lesson.module.css'
import type { Lesson } from './use-lesson.ts'

/** The learner's own plates: a letter each, a score each, the level under none of them. */
export function LessonTasting({ plan, lesson }: { plan: Plan; lesson: Lesson }) {
  const [key, setKey] = useState(false)
  const { name, scale } = lessonScale(plan)
  return (
    <>
      <Notice kind="caution" title="Before you taste">
        <CautionWords topics={['allergens', 'raw-dough']} />
      </Notice>
      <div>
        <Button size="small" onPress={() => setKey(true)}>
          For whoever serves: what lies on which plate
        </Button>
      </div>
      {lesson.said.nothingToTaste
        ? null
        : lesson.plates.map(({ letter }) => (
            <ScalePad
              key={letter}
              name={`Plate ${letter}, ${name}`}
              scale={scale}
              value={lesson.said.scores.get(letter) ?? null}
              onPick={(score) => lesson.say(`score/${letter}`, String(score))}
            />
          ))}
      <Switch
        label="There is nothing to taste here"
        on={lesson.said.nothingToTaste}
        onSwitch={(on) => lesson.say('nothing', on ? 'yes' : '')}
      />
      {lesson.covered === null ? null : (
        <p className={styles.soft}>{coveredText(lesson.covered)}</p>
      )}
      <Dialog title="What lies on which plate" open={key} onClose={() => setKey(false)}>
        <p>Not for the learner. Lay a letter beside each plate, and put this away.</p>
        <ul>
          {lesson.plates.map(({ letter, levelId }) => (
            <li key={letter}>
              <b>{letter}</b>: {levelNamed(plan, levelId)}
            </li>
          ))}
        </ul>
      </Dialog>
    </>
  )
}
