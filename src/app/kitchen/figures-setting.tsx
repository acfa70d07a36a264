import { Choice } from '@/app/kit/field/choice.tsx'
import { useManner } from '@/app/kit/field/use-manner.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { useWatched } from '@/app/kit/press/use-watched.ts'
import { useServices } from '@/app/services/services.ts'
import type { Manner } from '@/core/units/manner.ts'
import { figuresExample } from '@/core/wording/words/manner-text.ts'

/** How figures are shown and typed on this device: weights, temperatures, the time of day, the decimal mark. */
export function FiguresSetting() {
  const { notebook } = useServices()
  const manner = useManner()
  const watch = useWatched()
  const { temperature, ...figures } = manner
  const keep = (change: Partial<Omit<Manner, 'temperature'>>) =>
    watch(notebook.keepSettings({ figures: { ...figures, ...change } }))
  return (
    <Section title="Units and figures">
      <p>{figuresExample()}</p>
      <Choice
        label="Read and type weights in"
        hint="A field takes any unit that is typed behind the number: 5 kg, ½ oz, 2 dl."
        row
        value={manner.mass}
        options={[
          { value: 'gram', label: 'grams' },
          { value: 'ounce', label: 'ounces' },
        ]}
        onValue={(mass) => keep({ mass })}
      />
      <Choice
        label="Read and type temperatures in"
        row
        value={temperature}
        options={[
          { value: 'celsius', label: '°C' },
          { value: 'fahrenheit', label: '°F' },
        ]}
        onValue={(temperatureUnit) => watch(notebook.keepSettings({ temperatureUnit }))}
      />
      <Choice
        label="Time of day"
        row
        value={manner.hours}
        options={[
          { value: '24', label: '14:05' },
          { value: '12', label: '2:05 pm' },
        ]}
        onValue={(hours) => keep({ hours })}
      />
      <Choice
        label="Decimals"
        hint="Everything is kept in grams and °C; a level stands in the unit of its factor. A report says the units it is written in."
        row
        value={manner.decimal}
        options={[
          { value: 'point', label: '1.5' },
          { value: 'comma', label: '1,5' },
        ]}
        onValue={(decimal) => keep({ decimal })}
      />
    </Section>
  )
}
