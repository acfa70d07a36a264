import { Choice } from '@/app/kit/field/choice.tsx'
import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { Section } from '@/app/kit/page/section.tsx'
import { useWatched } from '@/app/kit/press/use-watched.ts'
import { useServices } from '@/app/services/services.ts'

/** The unit in which temperatures are shown and typed on this device. */
export function TemperatureSetting() {
  const { notebook } = useServices()
  const unit = useTemperatureUnit()
  const watch = useWatched()
  return (
    <Section title="Temperatures">
      <Choice
        label="Read and type temperatures in"
        hint="Everything is kept in °C. Levels stand in the unit of their factor, and reports and files are in °C."
        row
        value={unit}
        options={[
          { value: 'celsius', label: '°C' },
          { value: 'fahrenheit', label: '°F' },
        ]}
        onValue={(temperatureUnit) => watch(notebook.keepSettings({ temperatureUnit }))}
      />
    </Section>
  )
}
