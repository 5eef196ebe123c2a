import type { Day } from '#common/time'
import type { PlayerId } from '#squad/player'
import { Button, LinkButton } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Field } from '#ui/page/field'
import { Select } from '#ui/page/select'
import { paths } from '#ui/paths'

type Named = { readonly id: string; readonly name: string }

export type RecordChosen = {
  readonly playerId: PlayerId | null
  readonly personId: string | null
  readonly from: Day | null
  readonly to: Day | null
  readonly kind: 'changes' | 'looks' | null
}

type RecordChoicesProps = {
  readonly filter: RecordChosen
  readonly today: Day
  readonly children: readonly Named[]
  readonly people: readonly Named[]
}

/** Which lines are looked at; a plain form, whose choices stand in the address. */
export function RecordChoices({ filter, today, children, people }: RecordChoicesProps) {
  const optionsOf = (all: string, named: readonly Named[]) => [
    { value: '', label: all },
    ...named.map(({ id, name }) => ({ value: id, label: name })),
  ]
  const { playerId, personId, from, to, kind } = filter
  const isNarrowed = [playerId, personId, from, to, kind].some((one) => one !== null)
  return (
    <Details summary={isNarrowed ? 'Not everything is shown' : 'Choose what is shown'} isOpen={isNarrowed}>
      <form
        // A new address brings new choices, which untouched fields would not show by themselves.
        key={JSON.stringify(filter)}
        method="get"
        action={paths.clubRecord()}
        className="no-print grid items-end gap-3 sm:grid-cols-2 lg:grid-cols-5"
      >
        <Select
          name="kind"
          label="What"
          defaultValue={filter.kind ?? ''}
          options={[
            { value: '', label: 'changes and looks' },
            { value: 'changes', label: 'changes' },
            { value: 'looks', label: 'looks and files taken' },
          ]}
        />
        <Select
          name="child"
          label="About"
          defaultValue={filter.playerId ?? ''}
          options={optionsOf('every child', children)}
        />
        <Select
          name="person"
          label="By"
          defaultValue={filter.personId ?? ''}
          options={optionsOf('everybody', people)}
        />
        <Field name="from" label="From" type="date" max={today} defaultValue={filter.from ?? ''} />
        <Field name="to" label="To" type="date" max={today} defaultValue={filter.to ?? ''} />
        <div className="flex gap-3 sm:col-span-2 lg:col-span-5">
          <Button weight="plain">Show</Button>
          <LinkButton href={paths.clubRecord()}>Show everything</LinkButton>
        </div>
      </form>
    </Details>
  )
}
