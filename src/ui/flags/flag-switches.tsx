import type { FlagCause } from '#fairness/flags/flag-causes'
import { flagCauseWord, flagStatusWords } from '#ui/flags/flag-words'
import { Choice } from '#ui/page/choice'
import { withChoices } from '#ui/paths'

/** What of the flags is looked at; it stands in the address. */
export type FlagFilter = {
  readonly status: 'open' | 'acknowledged' | 'cleared'
  readonly cause: FlagCause | null
  readonly order: 'name' | 'cure'
}

type FlagSwitchesProps = {
  readonly path: string
  readonly filter: FlagFilter
  readonly counts: Readonly<Record<FlagFilter['status'], number>>
  readonly causes: readonly { readonly cause: FlagCause; readonly count: number }[]
}

export function FlagSwitches({ path, filter, counts, causes }: FlagSwitchesProps) {
  const href = (change: Partial<FlagFilter>) => {
    const { status, cause, order } = { ...filter, ...change }
    return withChoices(path, {
      status: status === 'open' ? null : status,
      cause,
      order: order === 'name' ? null : order,
    })
  }
  return (
    <div className="no-print flex flex-wrap items-end gap-x-8 gap-y-3">
      <Choice
        label="Flags"
        options={(['open', 'acknowledged', 'cleared'] as const).map((status) => ({
          label: `${flagStatusWords[status]} (${counts[status]})`,
          href: href({ status, cause: null }),
          isChosen: filter.status === status,
        }))}
      />
      <Choice
        label="Cause"
        options={[
          { label: 'all', href: href({ cause: null }), isChosen: filter.cause === null },
          ...causes.map(({ cause, count }) => ({
            label: `${flagCauseWord(cause)} (${count})`,
            href: href({ cause }),
            isChosen: filter.cause === cause,
          })),
        ]}
      />
      <Choice
        label="In order of"
        options={(['name', 'cure'] as const).map((order) => ({
          label: order === 'name' ? 'names' : 'what to do',
          href: href({ order }),
          isChosen: filter.order === order,
        }))}
      />
    </div>
  )
}
