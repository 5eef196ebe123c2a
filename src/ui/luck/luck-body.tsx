import { foundUpTo, type LuckOrHabit, type PlayerLuck } from '#fairness/luck/luck-or-habit'
import type { Squad, Term } from '#squad/squad'
import { LuckDetails } from '#ui/luck/luck-details'
import { playerSentence, restsOn, squadMeaning, squadSentence, tooFewSentence } from '#ui/luck/luck-words'
import { LinkButton } from '#ui/page/button'
import { Choice } from '#ui/page/choice'
import { Empty } from '#ui/page/empty'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths, withChoices } from '#ui/paths'
import { words } from '#ui/words'

type LuckBodyProps = {
  readonly squad: Squad
  readonly terms: readonly (Term & { readonly seasonName: string })[]
  readonly term: Term | null
  readonly luck: LuckOrHabit
  readonly part: number | null
  readonly players: readonly { readonly id: string; readonly name: string; readonly wantsToKeep: boolean }[]
}

/** The squad first; single players only where enough was written; how it was reckoned last. */
export function LuckBody({ squad, terms, term, luck, part, players }: LuckBodyProps) {
  if (!term) return <Empty>No term has begun yet.</Empty>
  return (
    <>
      <Choice
        label="Term"
        options={terms.map(({ id, name, seasonName }) => ({
          label: `${name} ${seasonName}`,
          href: withChoices(paths.luck(squad.id), { term: id }),
          isChosen: id === term.id,
        }))}
      />
      {luck.squad === null ? (
        <Empty next={<LinkButton href={paths.sessions(squad.id)}>{words.tab.sessions}</LinkButton>}>
          Nothing can be said of this term. It takes practices that were tapped as they went or written round
          by round, with turns that could have been given out otherwise.
        </Empty>
      ) : (
        <>
          <section aria-labelledby="the-squad">
            <SectionTitle id="the-squad" note={restsOn(luck)}>
              The squad
            </SectionTitle>
            <p className="max-w-prose text-xl">{squadSentence(luck.squad)}</p>
            <p className="mt-2 max-w-prose">{squadMeaning(luck.squad)}</p>
            <p className="mt-2 max-w-prose text-soft">
              A fair draw: in every turn names are drawn for the places there were, from those who were there;
              for goal from those who may keep.
            </p>
          </section>
          <section aria-labelledby="single-players" className="no-print">
            <SectionTitle id="single-players">Single players</SectionTitle>
            {luck.players === null ? (
              <p className="max-w-prose">{tooFewSentence(part)}</p>
            ) : (
              <PlayersPart squad={squad} all={luck.players} players={players} />
            )}
          </section>
        </>
      )}
      <LuckDetails luck={luck} players={players} />
    </>
  )
}

type PlayersPartProps = Pick<LuckBodyProps, 'squad' | 'players'> & { readonly all: readonly PlayerLuck[] }

function PlayersPart({ squad, all, players }: PlayersPartProps) {
  const found = all.filter(({ adjusted }) => adjusted <= foundUpTo)
  if (found.length === 0)
    return <p className="max-w-prose">No player stands out in any role: luck explains every single gap.</p>
  return (
    <>
      <p className="max-w-prose">
        Here a habit is likelier than luck. It may be a wish of the child, a role somebody is learning, or
        simply who stands nearest; whoever coaches knows which.
      </p>
      <ul className="mt-3 max-w-prose">
        {players.flatMap(({ id, name, wantsToKeep }) =>
          found
            .filter(({ playerId }) => playerId === id)
            .map((one) => (
              <li key={`${id} ${one.role}`} className="border-b border-rule py-2">
                <PageLink href={paths.player(squad.id, { playerId: id })}>{name}</PageLink>,{' '}
                {playerSentence(one)}
                {one.role === 'keep' && wantsToKeep ? ' (likes to keep goal)' : ''}.
              </li>
            )),
        )}
      </ul>
      <p className="mt-3 max-w-prose text-sm text-soft">
        Looked at: {all.length} pairs of a player and a role. Of those named, on average one in twenty at most
        is luck after all. Players by name.
      </p>
      <p className="mt-3">
        <LinkButton href={paths.flags(squad.id)}>What could be done: {words.tab.flags}</LinkButton>
      </p>
    </>
  )
}
