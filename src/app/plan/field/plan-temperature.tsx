import { useTemperatureUnit } from '@/app/kit/field/temperature-unit.ts'
import { temperatureEntry } from '@/app/kit/field/temperature-words.ts'
import type { PlanFieldPlace } from './plan-field.tsx'
import { PlanNumber } from './plan-number.tsx'

interface PlanTemperatureProps extends PlanFieldPlace {
  label: string
  /** °C, as the plan keeps it. */
  value: number | null
  /** The ends between which it can stand, °C. */
  range: 'kitchen' | 'oven'
}

type Needed = PlanTemperatureProps & { onValue: (celsius: number) => void; may?: undefined }
type Optional = PlanTemperatureProps & {
  onValue: (celsius: number | null) => void
  may: 'be-empty'
}

const ends = {
  kitchen: { leastCelsius: -30, mostCelsius: 60 },
  oven: { leastCelsius: -30, mostCelsius: 600 },
}

/** A temperature of the plan, shown and typed in the unit that the person chose, kept in °C. */
export function PlanTemperature(props: Needed | Optional) {
  const { field, path, label, value, range } = props
  const entry = temperatureEntry(useTemperatureUnit(), ends[range])
  const shared = {
    ...{ field: entry.draftKey(field), label, unit: entry.unit, check: entry.check },
    ...(path === undefined ? {} : { path }),
    value: entry.shown(value),
  }
  if (props.may === undefined)
    return <PlanNumber {...shared} onValue={(typed) => props.onValue(entry.celsius(typed))} />
  return (
    <PlanNumber
      {...shared}
      onValue={(typed) => props.onValue(typed === null ? null : entry.celsius(typed))}
      may="be-empty"
    />
  )
}
