import type { Role } from '#exposure/column'
import type { JudgedFigure } from '#fairness/book/judged-figure'
import type { ToldFlag } from '#fairness/book/told-flag'
import { BalanceBar } from '#ui/figures/balance-bar'
import { balanceSpanSeconds } from '#ui/figures/balance-geometry'
import { signedMinutes } from '#ui/figures/difference'
import { wholeMinutes } from '#ui/figures/minutes'
import { RoleMark } from '#ui/figures/role-mark'
import { showFigures } from '#ui/figures/shown-figure'
import { FlagLine } from '#ui/flags/flag-line'
import { Notice } from '#ui/page/notice'
import { PageLink } from '#ui/page/page-link'
import { paths } from '#ui/paths'
import { words } from '#ui/words'

type FlagOfPlayer = { readonly playerId: string; readonly told: ToldFlag }

type MovedPartProps = {
  readonly squadId: string
  readonly moved: {
    readonly players: readonly {
      readonly playerId: string
      readonly figures: readonly {
        readonly role: Role
        readonly before: JudgedFigure
        readonly after: JudgedFigure
      }[]
    }[]
    readonly isJudged: boolean
    readonly raised: readonly FlagOfPlayer[]
    readonly cleared: readonly FlagOfPlayer[]
  }
  readonly nameOf: (playerId: string) => string
}

/** What the practice does to the season: every difference before and after it, and the flags that came and went. */
export function MovedPart({ squadId, moved, nameOf }: MovedPartProps) {
  const { players, isJudged, raised, cleared } = moved
  const span = balanceSpanSeconds(players.flatMap(({ figures }) => figures.map(({ after }) => after)))
  const player = (playerId: string) => (
    <PageLink href={paths.player(squadId, { playerId })} className="tap inline-flex items-center lg:min-h-0">
      {nameOf(playerId)}
    </PageLink>
  )
  return (
    <>
      {isJudged ? null : <Notice>{words.notEnoughWritten}</Notice>}
      <table className="ruled book">
        <caption className="sr-only">
          Difference from an even share over the season’s practices, before and after this one
        </caption>
        <thead>
          <tr>
            <th scope="col">Player</th>
            {(players[0]?.figures ?? []).map(({ role }) => (
              <th key={role} scope="col">
                <RoleMark role={role} kind="practice" />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {players.map(({ playerId, figures }) => {
            const shown = showFigures(figures.map(({ after }) => after))
            return (
              <tr key={playerId} className="keep-together">
                <th scope="row">{player(playerId)}</th>
                {figures.map(({ role, before }, index) => {
                  const now = shown[index]
                  return now ? (
                    <td key={role}>
                      <span className="lg:hidden">
                        <RoleMark role={role} kind="practice" />
                      </span>
                      {isJudged ? (
                        <BalanceBar label={words.role[role]} shown={now} spanSeconds={span} />
                      ) : null}
                      <span className="whitespace-nowrap">
                        {signedMinutes(wholeMinutes(before.gapSeconds))} →{' '}
                        <span className="font-medium">
                          {signedMinutes(wholeMinutes(now.figure.gapSeconds))} min
                        </span>
                      </span>
                    </td>
                  ) : null
                })}
              </tr>
            )
          })}
        </tbody>
      </table>
      <Flags title="Flags that this practice raised" flags={raised} nameOf={player} />
      <Flags title="Flags that went with it" flags={cleared} nameOf={player} />
    </>
  )
}

type FlagsProps = {
  readonly title: string
  readonly flags: readonly FlagOfPlayer[]
  readonly nameOf: (playerId: string) => React.ReactNode
}

function Flags({ title, flags, nameOf }: FlagsProps) {
  if (flags.length === 0) return null
  return (
    <div className="mt-4">
      <h3 className="font-semibold">{title}</h3>
      <ul>
        {flags.map(({ playerId, told }) => (
          <FlagLine key={`${playerId} ${told.rule} ${told.sentence}`} flag={told} who={nameOf(playerId)} />
        ))}
      </ul>
    </div>
  )
}
