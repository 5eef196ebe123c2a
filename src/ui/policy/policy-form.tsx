import type { Day } from '#common/time'
import type { Policy } from '#squad/policy'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

type PolicyFormProps = {
  readonly ageLimit: number | null
  /** What the change begins from. */
  readonly policy: Policy
  readonly today: Day
  readonly send: SendForm
}

const percent = (part: number) => Math.round(part * 1000) / 10

type Setting = { readonly name: string; readonly label: string; readonly value: (policy: Policy) => number }

const settings: readonly Setting[] = [
  {
    name: 'toleranceMinutes',
    label: 'About even: up to so many minutes',
    value: (policy) => policy.toleranceSeconds / 60,
  },
  {
    name: 'tolerancePercent',
    label: 'or so many per cent of the even share',
    value: (policy) => percent(policy.toleranceShare),
  },
  { name: 'restLimitTurns', label: 'Waiting: most turns in a row', value: (policy) => policy.restLimitTurns },
  {
    name: 'goalPercent',
    label: 'Goal: most of a term, in per cent',
    value: (policy) => percent(policy.goalShareLimit),
  },
  {
    name: 'leastMatchPercent',
    label: 'Matches: least time played, in per cent',
    value: (policy) => percent(policy.leastMatchShare),
  },
  {
    name: 'middleAttackPercent',
    label: 'Middle of a match: so many per cent are attack',
    value: (policy) => percent(policy.middleAttackShare),
  },
  {
    name: 'matchesBeforeRoles',
    label: 'Attack and defence in matches: from so many matches on',
    value: (policy) => policy.matchesBeforeRoles,
  },
  {
    name: 'sessionsBeforeFlags',
    label: 'First flags: after so many sessions',
    value: (policy) => policy.sessionsBeforeFlags,
  },
  {
    name: 'writtenPercent',
    label: 'Writing down: needed, in per cent',
    value: (policy) => percent(policy.writtenShareNeeded),
  },
]

const places: Readonly<Record<string, string>> = {
  effectiveFrom: 'Holds from',
  ageLimit: 'Age',
  ...Object.fromEntries(settings.map(({ name, label }) => [name, label])),
}

/** A change of the rules: a new version from a day on; the old one stays to be read. */
export function PolicyForm({ ageLimit, policy, today, send }: PolicyFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="The rules were not changed"
      places={places}
      waiting="Saving. Where the middle of a match counts otherwise, matches are being counted anew; this can take a minute."
    >
      <input type="hidden" name="ageLimit" value={ageLimit ?? ''} />
      <div className="grid items-end gap-x-6 gap-y-4 sm:grid-cols-2 lg:grid-cols-3">
        {settings.map(({ name, label, value }) => (
          <Field
            key={name}
            id={`${name}-${ageLimit ?? 'club'}`}
            name={name}
            label={label}
            inputMode="decimal"
            required
            defaultValue={value(policy)}
          />
        ))}
        <Field
          id={`effectiveFrom-${ageLimit ?? 'club'}`}
          name="effectiveFrom"
          label="Holds from"
          type="date"
          required
          defaultValue={today}
        />
      </div>
      <div className="mt-4">
        <Button>Make these the rules</Button>
      </div>
    </ReplyForm>
  )
}
