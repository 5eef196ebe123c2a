import type { Day } from '#common/time'
import type { Squad, Term } from '#squad/squad'
import type { ProgrammeBlock, ProgrammeRule } from '#themes/programme-rule'
import type { ThemeFocus } from '#themes/theme-focus'
import { themeAndBelow } from '#themes/theme-lines'
import type { SendForm } from '#ui/entry/send-form'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'
import { BlocksForm } from '#ui/themes/blocks-form'
import { FocusForm } from '#ui/themes/focus-form'
import { ProgrammeForm } from '#ui/themes/programme-form'
import { RulesForm } from '#ui/themes/rules-form'
import { TakeProgrammeForm } from '#ui/themes/take-programme-form'
import { MoveThemeForm, ThemeForm } from '#ui/themes/theme-forms'

export type ThemeSends = Readonly<
  Record<'add' | 'change' | 'move' | 'programme' | 'rules' | 'blocks' | 'take' | 'focus', SendForm>
>

type Row = {
  readonly theme: {
    readonly id: string
    readonly name: string
    readonly parentId: string | null
    readonly order: number
    readonly asks: string
    readonly focus: ThemeFocus
  }
  readonly depth: number
}

type ThemesChangeProps = {
  readonly squad: Squad
  readonly term: Term | null
  readonly isTermOver: boolean
  readonly rows: readonly Row[]
  readonly programme: readonly { readonly themeId: string; readonly wishedShare: number }[]
  /** When themes may come, and where a programme can be taken from; null without a term. */
  readonly settings: ProgrammeSettings | null
  readonly sends: ThemeSends
}

type ProgrammeSettings = {
  readonly rules: readonly ProgrammeRule[]
  readonly blocks: readonly ProgrammeBlock[]
  readonly weekDays: readonly Day[]
  readonly designs: Parameters<typeof FocusForm>[0]['designs']
  readonly serving: readonly { readonly themeId: string; readonly designId: string }[]
  readonly sources: readonly { readonly value: string; readonly label: string; readonly why?: string }[]
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
      <OfTheTerm {...props} />
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

/** When the themes of a term may come, and a programme taken over. */
function OfTheTerm({ squad, term, isTermOver, rows, settings, sends }: ThemesChangeProps) {
  if (!term || !settings || isTermOver) return null
  const of = { squadId: squad.id, termId: term.id, weekDays: settings.weekDays }
  const themes = parentsOf(rows)
  return (
    <>
      {settings.rules.length > 0 ? (
        <>
          <Details summary={`When they may come in ${term.name}`}>
            <RulesForm key={term.id} {...of} rules={settings.rules} themes={themes} send={sends.rules} />
          </Details>
          <Details summary={`Weeks kept for one theme in ${term.name}`}>
            <BlocksForm key={term.id} {...of} blocks={settings.blocks} themes={themes} send={sends.blocks} />
          </Details>
        </>
      ) : null}
      <Details summary="Take over a programme" isOpen={settings.rules.length === 0}>
        <TakeProgrammeForm
          key={term.id}
          squadId={squad.id}
          term={term}
          hasProgramme={settings.rules.length > 0}
          sources={settings.sources}
          send={sends.take}
        />
      </Details>
    </>
  )
}

function ThemeChange({ squad, rows, row, settings, sends }: ThemesChangeProps & { readonly row: Row }) {
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
          {settings ? (
            <Details summary={`What “${theme.name}” is about, and its designs`}>
              <FocusForm
                squadId={squad.id}
                theme={theme}
                designs={settings.designs}
                servingIds={settings.serving.flatMap(({ themeId, designId }) =>
                  themeId === theme.id ? [designId] : [],
                )}
                send={sends.focus}
              />
            </Details>
          ) : null}
        </div>
      </div>
    </>
  )
}

function parentsOf(rows: readonly Row[]) {
  return rows.map(({ theme: { id, name }, depth }) => ({ id, name, depth }))
}
