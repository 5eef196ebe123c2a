import type { WrittenCount } from '#fairness/book/written-count'
import type { BelowPromise } from '#fairness/matches/below-promise'
import type { PlayedDay } from '#fairness/matches/long-days'
import type { MatchRow } from '#fairness/matches/match-rows'
import type { MatchFormat } from '#match/format/match-format'
import type { Player } from '#squad/player'
import type { Policy } from '#squad/policy'
import type { Season, Squad } from '#squad/squad'
import { NotEnoughWritten } from '#ui/book/not-enough-written'
import { balanceSpanSeconds } from '#ui/figures/balance-geometry'
import { MatchGrid, type NamedMatch } from '#ui/matches/match-grid'
import { MatchPlayersTable } from '#ui/matches/match-players-table'
import { PromisePart } from '#ui/matches/promise-part'
import { LinkButton } from '#ui/page/button'
import { Choice } from '#ui/page/choice'
import { Empty } from '#ui/page/empty'
import { SectionTitle } from '#ui/page/section-title'
import { paths, withChoices } from '#ui/paths'
import { words } from '#ui/words'

type MatchBookBodyProps = {
  readonly squad: Squad
  readonly season: Season
  readonly termId: string | null
  readonly policy: Policy
  readonly format: MatchFormat | null
  readonly written: WrittenCount
  readonly players: readonly Player[]
  readonly members: readonly MatchRow[]
  readonly guests: readonly MatchRow[]
  readonly matches: readonly NamedMatch[]
  readonly below: readonly BelowPromise[]
  readonly longDays: readonly PlayedDay[]
}

/** The season's matches: player by player, match by match, and what was promised. */
export function MatchBookBody(props: MatchBookBodyProps) {
  const { squad, season, termId, policy, written, matches } = props
  const path = paths.matches(squad.id)
  return (
    <>
      <div className="no-print">
        <Choice
          label="Term"
          options={[
            { label: 'Whole season', href: path, isChosen: termId === null },
            ...season.terms.map(({ id, name }) => ({
              label: name,
              href: withChoices(path, { term: id }),
              isChosen: id === termId,
            })),
          ]}
        />
      </div>
      <NotEnoughWritten written={written} policy={policy} />
      {matches.length === 0 ? (
        <Empty next={<LinkButton href={paths.sessions(squad.id)}>{words.tab.sessions}</LinkButton>}>
          No match of the days looked at is written down yet. Once one is, everybody’s minutes stand here.
        </Empty>
      ) : (
        <Parts {...props} />
      )}
      <p className="no-print">
        <LinkButton href={withChoices(paths.book(squad.id), { kind: 'match', term: termId })}>
          Matches in the season book
        </LinkButton>
      </p>
    </>
  )
}

function Parts(props: MatchBookBodyProps) {
  const { squad, policy, format, written, members, guests, matches, below, longDays, players } = props
  const table = {
    spanSeconds: balanceSpanSeconds([...members, ...guests].map(({ played }) => played)),
    isJudged: written.isEnough,
  }
  const hrefOf = (sessionId: string) => paths.session(squad.id, { sessionId })
  const nameOf = (playerId: string) => players.find(({ id }) => id === playerId)?.name ?? 'A guest'
  return (
    <>
      <section>
        <h2 className="sr-only">Players</h2>
        {written.isEnough ? (
          <p className="mb-3 max-w-prose text-sm text-soft">
            The upright line of a bar is the even share of the time a player was there for, the pale band is
            about even. A dot to the left had less, to the right more. Why somebody is behind stands in the
            season book.
          </p>
        ) : null}
        <MatchPlayersTable
          caption={`${squad.name}: matches`}
          rows={members}
          {...table}
          hrefOf={(playerId) => withChoices(paths.player(squad.id, { playerId }), { kind: 'match' })}
        />
      </section>
      {guests.length > 0 ? (
        <section>
          <SectionTitle note="They count in what was due to everyone there, and are outside every mean and flag.">
            {words.guests}
          </SectionTitle>
          <MatchPlayersTable caption="Guests: matches" rows={guests} {...table} hrefOf={() => null} />
        </section>
      ) : null}
      <section>
        <SectionTitle note="Minutes on the pitch. S: started. K: kept goal for some of it. ↓: less than everyone is promised.">
          Match by match
        </SectionTitle>
        <MatchGrid
          caption="Match by match"
          rows={[...members, ...guests]}
          matches={matches}
          below={below}
          hrefOf={hrefOf}
        />
      </section>
      <PromisePart
        {...{ format, matches, below, longDays, nameOf, hrefOf }}
        policyShare={policy.leastMatchShare}
      />
    </>
  )
}
