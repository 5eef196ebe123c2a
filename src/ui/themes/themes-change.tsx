import type { Squad, Term } from '#squad/squad'
import { themeAndBelow } from '#themes/theme-lines'
import type { SendForm } from '#ui/entry/send-form'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'
import { ProgrammeForm } from '#ui/themes/programme-form'
import { MoveThemeForm, ThemeForm } from '#ui/themes/theme-forms'

export type ThemeSends = Readonly<Record<'add' | 'change' | 'move' | 'programme', SendForm>>

type Row = {
  readonly theme: {
    readonly id: string
    readonly name: string
    readonly parentId: string | null
    readonly order: number
    readonly asks: string
  }
  readonly depth: number
}

type ThemesChangeProps = {
  readonly squad: Squad
  readonly term: Term | null
  readonly isTermOver: boolean
  readonly rows: readonly Row[]
  readonly programme: readonly { readonly themeId: string; readonly wishedShare: number }[]
  readonly sends: ThemeSends
}

/** What coaches set of the programme: the squad's own wishes for a term, and the club's themes. */
export function ThemesChange(props: ThemesChangeProps) {
  const { squad, term, isTermOver, rows, programme, sends } = props
  const wished = new Map(programme.map(({ themeId, wishedShare }) => [themeId, wishedShare]))
  return (
    <section className="no-print">
      <SectionTitle note="The programme is this squad’s; the themes are the whole club’s.">
        Change
      </SectionTitle>
      {term && rows.length > 0 ? (
        <Details summary={`The programme of ${term.name}`}>
          {isTermOver ? (
            <p className="max-w-prose text-soft">
              This term is over, and its programme stays. Choose a term above that runs or is to come.
            </p>
          ) : (
            <ProgrammeForm
              key={term.id}
              squadId={squad.id}
              term={term}
              lines={rows.map(({ theme: { id, name }, depth }) => ({
                id,
                name,
                depth,
                percent: Math.round((wished.get(id) ?? 0) * 100),
              }))}
              send={sends.programme}
            />
          )}
        </Details>
      ) : null}
      {rows.length > 0 ? (
        <Details summary="The themes: names, order, what stands under what">
          <ul className="space-y-6">
            {rows.map((row) => (
              <li key={row.theme.id} style={{ paddingLeft: `${row.depth * 1.25}rem` }}>
                <ThemeChange {...props} row={row} />
              </li>
            ))}
          </ul>
        </Details>
      ) : null}
      <Details summary="A new theme">
        <ThemeForm squadId={squad.id} theme={null} parents={parentsOf(rows)} send={sends.add} />
      </Details>
    </section>
  )
}

function ThemeChange({ squad, rows, row, sends }: ThemesChangeProps & { readonly row: Row }) {
  const { theme } = row
  const below = themeAndBelow(
    rows.map((one) => one.theme),
    theme.id,
  )
  return (
    <>
      <h3 className="font-semibold">{theme.name}</h3>
      <div className="mt-1 flex flex-wrap items-start gap-x-4">
        <MoveThemeForm squadId={squad.id} theme={theme} send={sends.move} />
        <div className="grow">
          <Details summary={`Change “${theme.name}”`}>
            <ThemeForm
              squadId={squad.id}
              theme={theme}
              parents={parentsOf(rows.filter((one) => !below.has(one.theme.id)))}
              send={sends.change}
            />
          </Details>
        </div>
      </div>
    </>
  )
}

function parentsOf(rows: readonly Row[]) {
  return rows.map(({ theme: { id, name }, depth }) => ({ id, name, depth }))
}
