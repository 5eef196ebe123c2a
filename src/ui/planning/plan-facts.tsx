import { useMemo } from 'react'
import { sayClosed } from '#planning/closes-today'
import { longInGoal } from '#planning/long-in-goal'
import { planBalance } from '#planning/plan-balance'
import type { MadePlan } from '#planning/plan-draft'
import { mixingOf } from '#planning/plan-measures'
import type { PlanRequest } from '#planning/practice-plan'
import { isInSides } from '#planning/side-lists'
import { waitsTold } from '#planning/waits-told'
import { goesTwice } from '#rotation/goes-twice'
import { planValues } from '#rotation/plan-values'
import { togetherTurns } from '#rotation/together-turns'
import { durationText } from '#ui/duration-text'
import type { NameOf, PlanningPolicy } from '#ui/planning/planning-types'
import { counted, listed } from '#ui/plural'
import { words } from '#ui/words'

type PlanFactsProps = {
  readonly request: PlanRequest
  readonly made: MadePlan
  readonly policy: Pick<PlanningPolicy, 'goalShareLimit'>
  readonly nameOf: NameOf
}

/** What there is to know of a plan besides how fair it is: waits, changes, who is long in goal, who plays with whom. */
export function PlanFacts({ request, made, policy, nameOf }: PlanFactsProps) {
  const facts = useMemo(() => {
    const mixing = mixingOf(made.plan)
    const values = planValues(made.problem, made.plan)
    const balances = planBalance(made.problem, { plan: made.plan, request })
    const closed = sayClosed(balances, request.rules.isGentle)
    return {
      waits: waitsTold(request, made.plan),
      mixing,
      closed,
      changes: values.roleChanges,
      uneven: unevenSides(request, made, nameOf),
      keepers: longInGoal(balances, policy.goalShareLimit),
    }
  }, [request, made, policy.goalShareLimit, nameOf])
  const { uneven, keepers, mixing, changes, closed } = facts
  const { turns, longest, byAgreement } = facts.waits
  const asked = request.rules.restLimit
  return (
    <ul className="list-disc space-y-1 pl-6 text-soft" data-part="facts">
      {closed.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
      <li>
        {turns === 0
          ? 'Nobody waits at all.'
          : `Nobody waits more than ${counted(turns, 'turn')} in a row${asked !== null && turns > asked ? `; ${counted(asked, 'turn')} was asked for` : ''}. Longest by the clock: ${durationText(longest?.seconds ?? 0)}, ${nameOf(longest?.playerId ?? '')}.`}
      </li>
      {byAgreement.map(({ playerId, turns: times }) => (
        <li key={playerId}>
          {nameOf(playerId)} waits up to {counted(times, 'turn')} in a row, since fewer turns are agreed.
        </li>
      ))}
      <li>
        {changes === 0
          ? 'Nobody changes between attack, defence and goal from one turn to the next inside a round.'
          : `${counted(changes, 'change')} between attack, defence and goal from one turn to the next inside a round.`}
      </li>
      <li>
        {mixing.pairsMet} of {mixing.pairs} pairs play side by side at least once, no pair more than{' '}
        {counted(mixing.most, 'time')}.
      </li>
      {keepers.map(({ playerId, turns: times, of }) => (
        <li key={playerId}>
          {nameOf(playerId)} is in goal for most of the time, {times} of {counted(of, 'turn')}.{' '}
          {request.players.filter(({ keeps, notInGoal }) => keeps && !notInGoal).length > 1
            ? '“Not in goal today” under “for today” gives it to others.'
            : 'Nobody else who is expected may be in goal.'}
        </li>
      ))}
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
    const isFew = isInSides(request) && players.length * 2 <= side.length
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
