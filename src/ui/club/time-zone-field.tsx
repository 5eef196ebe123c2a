import { Select } from '#ui/page/select'

type TimeZoneFieldProps = {
  readonly zones: readonly string[]
  readonly chosen: string
  readonly problem?: string | null
}

/** The zone by whose midnight the club's day begins. */
export function TimeZoneField({ zones, chosen, problem }: TimeZoneFieldProps) {
  return (
    <div>
      <Select
        name="timeZone"
        label="Time zone: the town nearest to you"
        defaultValue={chosen}
        options={zones.map((zone) => ({ value: zone, label: zone.replaceAll('_', ' ') }))}
      />
      {problem ? <p className="mt-1 font-medium text-warn">{problem}</p> : null}
    </div>
  )
}
