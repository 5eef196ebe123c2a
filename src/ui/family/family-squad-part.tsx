import type { Day } from '#common/time'
import type { FamilyPage, FamilyTheme } from '#family/family-page'
import type { ComingWhen } from '#family/next-practice'
import { AttendancePart } from '#ui/family/attendance-part'
import { comingText, confirmedText, metText, nothingConfirmed, restsOnText } from '#ui/family/family-words'
import { KindPart } from '#ui/family/kind-part'
import { SectionTitle } from '#ui/page/section-title'

/** A child's season in one squad, as its family reads it. */
export type FamilySquad = {
  readonly squadId: string
  readonly squadName: string
  readonly today: Day
  readonly shown: {
    readonly page: FamilyPage
    readonly confirmedBy: string
    readonly confirmedOn: Day
  } | null
  readonly coming: { readonly themeName: string | null; readonly when: ComingWhen | null } | null
}

export function FamilySquadPart({
  squad,
  hasName,
}: {
  readonly squad: FamilySquad
  readonly hasName: boolean
}) {
  const { shown, coming, today } = squad
  return (
    <div className="family-squad space-y-6">
      {hasName ? <h2 className="text-xl font-semibold">{squad.squadName}</h2> : null}
      {shown ? <Rests page={shown.page} /> : <p className="max-w-prose text-lg">{nothingConfirmed}</p>}
      {shown?.page.note ? (
        <section className="max-w-prose border-l-4 border-rule-strong px-4 py-1">
          <h2 className="font-semibold">From the coach</h2>
          <p className="whitespace-pre-line">{shown.page.note}</p>
        </section>
      ) : null}
      {shown?.page.kinds
        .filter(({ held }) => held > 0)
        .map((kind) => (
          <KindPart key={kind.kind} of={kind} today={today} />
        ))}
      <section>
        <SectionTitle>What comes next</SectionTitle>
        <p className="max-w-prose">{comingText(coming)}</p>
      </section>
      {shown ? (
        <>
          <Themes themes={shown.page.themes} />
          <section>
            <SectionTitle>Days there and days away</SectionTitle>
            {shown.page.kinds.map(({ kind, attendance }) => (
              <AttendancePart key={kind} kind={kind} attendance={attendance} />
            ))}
          </section>
          <p className="max-w-prose text-soft">{confirmedText(shown)}</p>
        </>
      ) : null}
    </div>
  )
}

function Rests({ page }: { readonly page: FamilyPage }) {
  const sum = (of: 'held' | 'written') => page.kinds.reduce((total, kind) => total + kind[of], 0)
  return <p className="max-w-prose text-lg">{restsOnText({ held: sum('held'), written: sum('written') })}</p>
}

function Themes({ themes }: { readonly themes: readonly FamilyTheme[] }) {
  return (
    <section>
      <SectionTitle>What was practised</SectionTitle>
      {themes.length === 0 ? <p className="text-soft">No theme is written down yet.</p> : null}
      <dl className="family-themes max-w-3xl">
        {themes.map((theme) => (
          <div
            key={theme.name}
            style={{ paddingLeft: `${theme.depth * 1.25}rem` }}
            className="keep-together border-b border-rule py-1.5 sm:grid sm:grid-cols-[1fr_1fr] sm:gap-x-4"
          >
            <dt className="font-medium">{theme.name}</dt>
            <dd className="max-sm:text-soft">{metText(theme)}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
