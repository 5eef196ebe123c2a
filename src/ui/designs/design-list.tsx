import type { Cast } from '#practice/cast-faults'
import type { ChildrenNeeded } from '#practice/design-stretch'
import { type RoundKind, roundKinds } from '#practice/round-kind'
import type { Squad } from '#squad/squad'
import { capital } from '#ui/capital'
import { kindWords, spanText } from '#ui/designs/design-words'
import { Button, LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { Field } from '#ui/page/field'
import { PageLink } from '#ui/page/page-link'
import { Select } from '#ui/page/select'
import { paths, withChoices } from '#ui/paths'
import { counted } from '#ui/plural'
import { themeOptions } from '#ui/themes/theme-options'

type DesignListProps = {
  readonly squad: Squad
  readonly cast: Cast
  readonly themes: readonly { readonly id: string; readonly name: string; readonly depth: number }[]
  readonly filter: {
    readonly themeId: string | null
    readonly children: number | null
    readonly kind: RoundKind | null
    readonly isPutAway: boolean
  }
  readonly designs: readonly {
    readonly id: string
    readonly name: string
    readonly themeName: string | null
    readonly needed: ChildrenNeeded | null
    readonly kinds: readonly RoundKind[]
    readonly rounds: number
    readonly lengthSeconds: number
  }[]
  readonly of: number
  readonly putAway: number
  readonly mayChange: boolean
}

/** The club's library, by name, with what a coach chooses by. */
export function DesignList(props: DesignListProps) {
  const { squad, filter, designs, of, putAway, mayChange } = props
  return (
    <>
      {mayChange && !filter.isPutAway ? (
        <p>
          <LinkButton href={paths.newDesign(squad.id)} weight="main">
            New design
          </LinkButton>
        </p>
      ) : null}
      <FilterForm {...props} />
      <section>
        <h2 className="mb-2 text-lg font-semibold">
          {designs.length === of ? counted(of, 'design') : `${designs.length} of ${counted(of, 'design')}`}
          {filter.isPutAway ? ', put away' : ''}
        </h2>
        {designs.length === 0 ? (
          <Empty next={<LinkButton href={paths.designs(squad.id)}>Show all designs</LinkButton>}>
            {of === 0 ? 'There is none yet.' : 'No design is like this. Leave one of the choices open.'}
          </Empty>
        ) : (
          <DesignLines squad={squad} designs={designs} />
        )}
      </section>
      {putAway > 0 || filter.isPutAway ? (
        <p>
          <PageLink
            href={withChoices(paths.designs(squad.id), { away: filter.isPutAway ? null : 'yes' })}
            className="tap inline-flex items-center"
          >
            {filter.isPutAway ? 'Back to the designs in use' : `Put away: ${counted(putAway, 'design')}`}
          </PageLink>
        </p>
      ) : null}
    </>
  )
}

/** Sent by its address, so that it works without a script and can be kept as a bookmark. */
function FilterForm({ squad, cast, themes, filter }: DesignListProps) {
  return (
    <form
      action={paths.designs(squad.id)}
      className="grid max-w-3xl grid-cols-2 items-end gap-3 sm:grid-cols-[2fr_2fr_1fr_auto]"
      aria-label="Which designs"
    >
      {filter.isPutAway ? <input type="hidden" name="away" value="yes" /> : null}
      <Select
        name="theme"
        label="Theme"
        defaultValue={filter.themeId ?? ''}
        options={[{ value: '', label: 'any' }, ...themeOptions(themes)]}
      />
      <Select
        name="kind"
        label="A round with"
        defaultValue={filter.kind ?? ''}
        options={[
          { value: '', label: 'any numbers' },
          ...roundKinds
            .filter((kind) => kind !== 'alone' && kind !== 'mixed')
            .map((kind) => ({ value: kind, label: kindWords[kind] })),
        ]}
      />
      <Field
        name="children"
        label="Children"
        type="number"
        inputMode="numeric"
        min={2}
        max={40}
        placeholder={String(cast.children)}
        defaultValue={filter.children ?? ''}
      />
      <Button weight="plain">Show</Button>
    </form>
  )
}

/** Lines and no table: on a phone each is read as a sentence. */
function DesignLines({ squad, designs }: Pick<DesignListProps, 'squad' | 'designs'>) {
  return (
    <ul className="border-t border-rule">
      {designs.map(({ id, name, themeName, needed, kinds, lengthSeconds }) => (
        <li
          key={id}
          className="grid gap-x-8 border-b border-rule py-2 md:grid-cols-[minmax(0,4fr)_minmax(0,4fr)_minmax(0,5fr)_7rem] md:items-center"
        >
          <div>
            <PageLink
              href={paths.design(squad.id, { designId: id })}
              className="tap inline-flex items-center font-semibold"
            >
              {name}
            </PageLink>
            {themeName ? <p className="text-sm text-soft">{themeName}</p> : null}
          </div>
          <p className="tabular-nums">
            {needed ? `${spanText(needed.fewest, needed.most)} children, best with ${needed.best}` : '–'}
          </p>
          <p className="text-soft">{capital(kinds.map((kind) => kindWords[kind]).join(', '))}</p>
          <p className="tabular-nums md:text-right">about {Math.round(lengthSeconds / 60)} min</p>
        </li>
      ))}
    </ul>
  )
}
