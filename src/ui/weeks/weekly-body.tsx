import type { Problem } from '#common/problem'
import type { Result } from '#common/result'
import type { Day } from '#common/time'
import type { ClosedDays } from '#squad/closed-days'
import type { Ground } from '#squad/ground'
import type { WeeklyDays } from '#squad/weekly-days'
import type { SendForm } from '#ui/entry/send-form'
import { LinkButton } from '#ui/page/button'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { ClosedDaysPart } from '#ui/weeks/closed-days-part'
import { GroundsPart } from '#ui/weeks/grounds-part'
import { AskWeeklyForm, FoundWeekly } from '#ui/weeks/weekly-form'

export type WeeklySends = Readonly<
  Record<'enter' | 'addClosed' | 'removeClosed' | 'setGround' | 'removeGround', SendForm>
>

type WeeklyBodyProps = {
  readonly squad: { readonly id: string }
  readonly today: Day
  readonly lastDay: Day
  readonly asked: Parameters<typeof AskWeeklyForm>[0]['asked']
  readonly found: Result<WeeklyDays, Problem> | null
  readonly closed: readonly ClosedDays[]
  readonly grounds: readonly Ground[]
  readonly unknownPlaces: readonly string[]
  readonly mayArrange: boolean
  readonly sends: WeeklySends
}

/** A practice in every week, the days without, and how large the grounds are. */
export function WeeklyBody({ squad, found, asked, sends, ...page }: WeeklyBodyProps) {
  return (
    <>
      <section>
        <SectionTitle note="One day of the week at a time. Days without practice are left out, and so are days that have a practice. You see the days before anything is added.">
          A practice every week
        </SectionTitle>
        <AskWeeklyForm
          squadId={squad.id}
          today={page.today}
          lastDay={page.lastDay}
          asked={asked}
          problems={found && !found.ok ? found.reasons : []}
        />
        {found?.ok ? (
          <FoundWeekly squadId={squad.id} asked={asked} days={found.value} send={sends.enter} />
        ) : null}
      </section>
      <section>
        <SectionTitle note="Holidays, fairs, a closed hall. The weeks ahead are planned around them; practices that stand on such a day stay in the list and are not planned.">
          Days without practice
        </SectionTitle>
        <ClosedDaysPart
          closed={page.closed}
          squadId={squad.id}
          add={sends.addClosed}
          remove={sends.removeClosed}
          elsewhere={
            page.mayArrange ? (
              <PageLink href={paths.clubSeasons()}>For the whole club</PageLink>
            ) : (
              'for the whole club; the head coach changes it'
            )
          }
        />
      </section>
      <section>
        <SectionTitle note="The part that you have for practice. The weeks ahead put no larger design there. For every squad of the club.">
          How large the grounds are
        </SectionTitle>
        <GroundsPart
          squadId={squad.id}
          grounds={page.grounds}
          unknownPlaces={page.unknownPlaces}
          set={sends.setGround}
          remove={sends.removeGround}
        />
      </section>
      <p>
        <LinkButton href={paths.sessions(squad.id)}>All practices and matches</LinkButton>
      </p>
    </>
  )
}
