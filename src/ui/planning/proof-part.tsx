'use client'

import { useMemo } from 'react'
import { sayClosed } from '#planning/closes-today'
import { planBalance } from '#planning/plan-balance'
import type { MadePlan } from '#planning/plan-draft'
import { longestWaits, mixingOf } from '#planning/plan-measures'
import { proofOfPlan } from '#planning/plan-proof'
import type { PlanRequest } from '#planning/practice-plan'
import { turnFrames } from '#planning/turn-frames'
import { goesTwice } from '#rotation/goes-twice'
import { planValues } from '#rotation/plan-values'
import { togetherTurns } from '#rotation/together-turns'
import { durationText } from '#ui/duration-text'
import { Button } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import type { NameOf } from '#ui/planning/planning-types'
import { ProgressBar } from '#ui/planning/progress-bar'
import type { PlanSearch } from '#ui/planning/use-plan-draft'
import { counted, listed } from '#ui/plural'
import { words } from '#ui/words'

type ProofPartProps = {
  readonly request: PlanRequest
  readonly made: MadePlan
  readonly nameOf: NameOf
  readonly search: PlanSearch
  readonly fault: string | null
  readonly onSearch: () => void
  readonly onStop: () => void
}

/** How fair the plan is, how long anyone waits, how much changes; and the search for a fairer one. */
export function ProofPart({ request, made, nameOf, search, fault, onSearch, onStop }: ProofPartProps) {
  const proof = useMemo(() => proofOfPlan(made.problem, made), [made])
  return (
    <div className="space-y-3">
      <p
        className="border-l-4 border-accent py-1 pl-4 text-lg font-semibold"
        data-part="proof"
        data-settled={search === null && made.isSettled ? 'yes' : 'no'}
      >
        {proof.sentence}
      </p>
      <PlanFacts request={request} made={made} nameOf={nameOf} />
      {fault ? <Notice>{fault}</Notice> : null}
      <SearchBar search={search} isProven={proof.proven} onSearch={onSearch} onStop={onStop} />
    </div>
  )
}

function PlanFacts({ request, made, nameOf }: Pick<ProofPartProps, 'request' | 'made' | 'nameOf'>) {
  const facts = useMemo(() => {
    const { rounds } = request.design
    const waits = longestWaits(made.plan, { rounds, turns: turnFrames(rounds) })
    const longest = waits.reduce(
      (worst, wait, at) => (wait.seconds > (waits[worst]?.seconds ?? 0) ? at : worst),
      0,
    )
    const turns = Math.max(0, ...waits.map((wait) => wait.turns))
    const mixing = mixingOf(made.plan)
    const values = planValues(made.problem, made.plan)
    const balances = planBalance(made.problem, { plan: made.plan, request })
    const closed = sayClosed(balances, request.rules.isGentle)
    return {
      waits,
      longest,
      turns,
      mixing,
      closed,
      changes: values.roleChanges,
      uneven: unevenSides(request, made, nameOf),
    }
  }, [request, made, nameOf])
  const { uneven, mixing, changes, turns, waits, longest, closed } = facts
  const asked = request.rules.restLimit
  const wait = waits[longest]
  return (
    <ul className="list-disc space-y-1 pl-6 text-soft" data-part="facts">
      {closed.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
      <li>
        {turns === 0
          ? 'Nobody waits at all.'
          : `Nobody waits more than ${counted(turns, 'turn')} in a row${asked !== null && turns > asked ? `; ${counted(asked, 'turn')} was asked for` : ''}. Longest by the clock: ${durationText(wait?.seconds ?? 0)}, ${nameOf(request.players[longest]?.playerId ?? '')}.`}
      </li>
      <li>
        {changes === 0
          ? 'Nobody changes between attack, defence and goal from one turn to the next inside a round.'
          : `${counted(changes, 'change')} between attack, defence and goal from one turn to the next inside a round.`}
      </li>
      <li>
        {mixing.pairsMet} of {mixing.pairs} pairs play side by side at least once, no pair more than{' '}
        {counted(mixing.most, 'time')}.
      </li>
      {uneven.map(({ round, role, names }) => (
        <li key={`${round} ${role}`}>
          Uneven sides: in round {round} once more {words.doing[role]} than the others: {names}.
        </li>
      ))}
      {togetherTurns(made.problem, made.plan).map(({ pair, turns: times, of }) => (
        <li key={pair.join(' ')}>
          {listed(pair.map((player) => nameOf(request.players[player]?.playerId ?? '')))} are together in{' '}
          {times} of {counted(of, 'turn')}.
        </li>
      ))}
    </ul>
  )
}

/** Who of a side goes once more, where that is so few of them that it is worth saying. */
function unevenSides(request: PlanRequest, made: MadePlan, nameOf: NameOf) {
  return goesTwice(made.problem, made.plan).flatMap(({ round, role, players }) => {
    const own = made.problem.rounds[round]
    // A half of a free game carries a letter behind the number of its round.
    const number = Number.parseInt(own?.id ?? '', 10)
    const side = own?.sides?.[role] ?? []
    const isFew = players.length * 2 <= side.length
    if (!isFew || request.design.rounds[number - 1]?.isFreeGame) return []
    return [
      {
        round: number,
        role,
        names: listed(players.map((player) => nameOf(request.players[player]?.playerId ?? ''))),
      },
    ]
  })
}

function SearchBar({
  search,
  isProven,
  onSearch,
  onStop,
}: Pick<ProofPartProps, 'search' | 'onSearch' | 'onStop'> & { readonly isProven: boolean }) {
  if (search)
    return (
      <div className="flex flex-wrap items-center gap-3">
        <ProgressBar label="Looking for a better plan" value={search.elapsedMs} max={search.limitMs} />
        <span role="status">
          {isProven
            ? 'Nothing fairer is possible; looking for fewer changes and better mixing'
            : 'Looking for a fairer plan'}
        </span>
        <span aria-hidden="true" className="figures text-soft">
          {Math.round(search.elapsedMs / 1000)} of {Math.round(search.limitMs / 1000)} s
        </span>
        <Button type="button" weight="plain" onClick={onStop}>
          Stop, keep the best so far
        </Button>
      </div>
    )
  return isProven ? null : (
    <p>
      <Button type="button" weight="plain" onClick={onSearch}>
        Look for a fairer plan around what is held fast
      </Button>
    </p>
  )
}
