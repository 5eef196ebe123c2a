import type { BookRow } from '#fairness/book/book-rows'
import type { WrittenCount } from '#fairness/book/written-count'
import type { Policy } from '#squad/policy'
import type { Season, Squad } from '#squad/squad'
import type { ThemeLine } from '#themes/theme-lines'
import { BookLegend } from '#ui/book/book-legend'
import { type BookFilter, BookSwitches } from '#ui/book/book-switches'
import { BookTable } from '#ui/book/book-table'
import { NotEnoughWritten } from '#ui/book/not-enough-written'
import { balanceSpanSeconds } from '#ui/figures/balance-geometry'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { SectionTitle } from '#ui/page/section-title'
import { paths, withChoices } from '#ui/paths'
import { words } from '#ui/words'

type SeasonBookBodyProps = {
  readonly squad: Squad
  readonly season: Season
  readonly themes: readonly ThemeLine[]
  readonly filter: BookFilter
  readonly policy: Policy
  readonly written: WrittenCount
  readonly members: readonly BookRow[]
  readonly guests: readonly BookRow[]
}

export function SeasonBookBody(props: SeasonBookBodyProps) {
  const { squad, season, themes, filter, policy, written, members, guests } = props
  const { kind } = filter
  const figures = [...members, ...guests].flatMap((row) => row.figures.map(({ figure }) => figure))
  const table = {
    kind,
    spanSeconds: balanceSpanSeconds(figures),
    isJudged: written.isEnough,
    hrefOf: (playerId: string) => paths.player(squad.id, { playerId }),
  }
  return (
    <>
      <BookSwitches path={paths.book(squad.id)} filter={filter} terms={season.terms} themes={themes} />
      <NotEnoughWritten written={written} policy={policy} />
      {written.written === 0 ? (
        <Empty next={<LinkButton href={paths.sessions(squad.id)}>{words.tab.sessions}</LinkButton>}>
          Nothing is written down yet of the days and {words.kinds[kind].toLowerCase()} looked at. Once a
          practice or a match is written, every player’s turns stand here.
        </Empty>
      ) : (
        <>
          <section>
            <h2 className="sr-only">Players</h2>
            {written.isEnough ? <BookLegend policy={policy} kind={kind} /> : null}
            <BookTable caption={`${squad.name}: players by roles`} rows={members} {...table} />
          </section>
          {guests.length > 0 ? (
            <section>
              <SectionTitle note="They count in what was due to everyone there, and are outside every mean and flag.">
                {words.guests}
              </SectionTitle>
              <BookTable caption="Guests by roles" rows={guests} {...table} hrefOf={() => null} />
            </section>
          ) : null}
        </>
      )}
      <p className="no-print flex flex-wrap gap-3">
        <LinkButton href={withChoices(paths.matches(squad.id), { term: filter.termId })}>
          Matches: minutes, starts and lines
        </LinkButton>
        <LinkButton href={paths.players(squad.id)}>Players: who belongs to the squad</LinkButton>
      </p>
    </>
  )
}
