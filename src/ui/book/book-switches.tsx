import { type Situation, situations } from '#exposure/column'
import type { Term } from '#squad/squad'
import type { ThemeLine } from '#themes/theme-lines'
import { Button } from '#ui/page/button'
import { Choice } from '#ui/page/choice'
import { Select } from '#ui/page/select'
import { withChoices } from '#ui/paths'
import { words } from '#ui/words'

/** What the season book is looked at for; it stands in the address. */
export type BookFilter = {
  readonly kind: 'practice' | 'match'
  readonly termId: string | null
  readonly themeId: string | null
  readonly situation: Situation | null
}

type BookSwitchesProps = {
  readonly path: string
  readonly filter: BookFilter
  readonly terms: readonly Term[]
  readonly themes: readonly ThemeLine[]
}

/** Practice and match are judged apart: there is no switch for both. Matches have no themes and no situations. */
export function BookSwitches({ path, filter, terms, themes }: BookSwitchesProps) {
  const href = (change: Partial<BookFilter>) => {
    const { kind, termId, themeId, situation } = { ...filter, ...change }
    const isMatch = kind === 'match'
    return withChoices(path, {
      term: termId,
      kind: isMatch ? kind : null,
      theme: isMatch ? null : themeId,
      situation: isMatch ? null : situation,
    })
  }
  return (
    <div className="no-print flex flex-wrap items-end gap-x-8 gap-y-3">
      <Choice
        label="Look at"
        options={(['practice', 'match'] as const).map((kind) => ({
          label: words.kinds[kind],
          href: href({ kind }),
          isChosen: filter.kind === kind,
        }))}
      />
      <Choice
        label="Term"
        options={[
          { label: 'Whole season', href: href({ termId: null }), isChosen: filter.termId === null },
          ...terms.map((term) => ({
            label: term.name,
            href: href({ termId: term.id }),
            isChosen: filter.termId === term.id,
          })),
        ]}
      />
      {filter.kind === 'practice' ? (
        <>
          <Choice
            label="When our side had"
            options={[
              { label: 'all numbers', href: href({ situation: null }), isChosen: filter.situation === null },
              ...situations.map((situation) => ({
                label: words.situation[situation],
                href: href({ situation }),
                isChosen: filter.situation === situation,
              })),
            ]}
          />
          <ThemeChoice path={path} filter={filter} themes={themes} />
        </>
      ) : null}
    </div>
  )
}

function ThemeChoice({ path, filter, themes }: Omit<BookSwitchesProps, 'terms'>) {
  const kept = { term: filter.termId, situation: filter.situation }
  return (
    <form method="get" action={path} className="flex items-end">
      {Object.entries(kept).map(([name, value]) =>
        value ? <input key={name} type="hidden" name={name} value={value} /> : null,
      )}
      <Select
        // A new address brings a new choice, which an untouched field would not show by itself.
        key={filter.themeId ?? ''}
        name="theme"
        label="Theme"
        defaultValue={filter.themeId ?? ''}
        options={[
          { value: '', label: 'all themes' },
          ...themes.map(({ theme, depth }) => ({
            value: theme.id,
            label: `${'– '.repeat(depth)}${theme.name}`,
          })),
        ]}
      />
      <Button weight="plain" className="-ml-px">
        Show
      </Button>
    </form>
  )
}
