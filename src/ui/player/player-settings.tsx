import type { Day } from '#common/time'
import type { LineWishes } from '#match/format/line-wish'
import type { KeepsChange } from '#squad/keeps-change'
import type { PlayerAway } from '#squad/player-away'
import type { SendForm } from '#ui/entry/send-form'
import { Details } from '#ui/page/details'
import { SectionTitle } from '#ui/page/section-title'
import { AboutForm } from '#ui/player/about-form'
import type { Agreed } from '#ui/player/agreed-list'
import { AgreeForm, EndAgreementForm } from '#ui/player/agreement-forms'
import { AwayForms } from '#ui/player/away-forms'
import { KeepsForm } from '#ui/player/keeps-form'
import { LinesForm } from '#ui/player/lines-form'
import { linesSaid } from '#ui/player/lines-said'
import { MembershipForm } from '#ui/player/membership-form'
import { keepsLines, memberText } from '#ui/player/setting-words'
import { listed } from '#ui/plural'
import { spanText } from '#ui/weeks/span-text'

export type PlayerSends = Readonly<
  Record<
    'about' | 'keeps' | 'lines' | 'membership' | 'agree' | 'endAgreement' | 'addAway' | 'removeAway',
    SendForm
  >
>

type PlayerSettingsProps = {
  readonly squadId: string
  readonly playerId: string
  readonly name: string
  readonly keeps: boolean
  readonly wantsToKeep: boolean
  readonly wishes: LineWishes
  readonly keepsChanges: readonly KeepsChange[]
  readonly memberships: readonly { readonly firstDay: Day; readonly lastDay: Day | null }[]
  readonly away: readonly PlayerAway[]
  readonly today: Day
  readonly mayChangePlayer: boolean
  readonly agreed: readonly Agreed[]
  readonly sends: PlayerSends
}

/** How the player stands, and what its coaches can set. */
export function PlayerSettings(props: PlayerSettingsProps) {
  const { keeps, wantsToKeep, wishes, keepsChanges, memberships, today } = props
  const lines = linesSaid(wishes)
  return (
    <section className="no-print">
      <SectionTitle>In the squad</SectionTitle>
      <ul className="max-w-prose space-y-1">
        {memberships.map(({ firstDay, lastDay }) => (
          <li key={firstDay}>Member {memberText({ firstDay, lastDay, today })}.</li>
        ))}
        {keepsLines({ keeps, keepsChanges }).map((line) => (
          <li key={line}>{line}</li>
        ))}
        {wantsToKeep ? <li>Asks to keep goal.</li> : null}
        {lines ? <li>{lines}</li> : null}
        {props.away.length > 0 ? <li>Will be away {listed(props.away.map(spanText))}.</li> : null}
      </ul>
      <h3 className="mt-4 font-semibold">Change</h3>
      {props.mayChangePlayer ? (
        <>
          <OfThePlayer {...props} />
          <OfTheFamily {...props} />
        </>
      ) : (
        <p className="max-w-prose text-sm text-soft">
          In another squad now: the coaches there change the name, who keeps, and what is agreed.
        </p>
      )}
      <OfTheSquad {...props} />
    </section>
  )
}

function OfThePlayer({ name, keeps, wantsToKeep, wishes, today, sends, ...of }: PlayerSettingsProps) {
  const { squadId, playerId } = of
  return (
    <>
      <Details summary="May be put in goal, or asks not to be">
        <KeepsForm of={{ squadId, playerId }} keeps={keeps} today={today} send={sends.keeps} />
      </Details>
      <Details summary="Lines in matches: likes, is learning, not yet">
        <LinesForm of={{ squadId, playerId }} wishes={wishes} send={sends.lines} />
      </Details>
      <Details summary="Days away">
        <AwayForms of={{ squadId, playerId }} away={of.away} today={today} sends={sends} />
      </Details>
      <Details summary="Name, and asking to keep goal">
        <AboutForm of={{ squadId, playerId }} name={name} wantsToKeep={wantsToKeep} send={sends.about} />
      </Details>
    </>
  )
}

function OfTheFamily({ agreed, today, sends, squadId, playerId }: PlayerSettingsProps) {
  const of = { squadId, playerId }
  const standing = agreed.filter(({ lastDay }) => lastDay === null || lastDay >= today)
  return (
    <Details summary="What is agreed with the family">
      <div className="space-y-6">
        {standing.map((one) => (
          <EndAgreementForm key={one.id} of={of} today={today} agreed={one} send={sends.endAgreement} />
        ))}
        <AgreeForm of={of} today={today} send={sends.agree} />
      </div>
    </Details>
  )
}

function OfTheSquad({ memberships, today, sends, squadId, playerId }: PlayerSettingsProps) {
  const of = { squadId, playerId }
  const isOver = memberships.every(({ lastDay }) => lastDay !== null)
  return (
    <Details summary="Days in the squad: joins, leaves, comes back">
      <div className="space-y-6">
        {memberships.map((held) => (
          <MembershipForm key={held.firstDay} of={of} held={held} today={today} send={sends.membership} />
        ))}
        {isOver ? <MembershipForm of={of} held={null} today={today} send={sends.membership} /> : null}
      </div>
    </Details>
  )
}
