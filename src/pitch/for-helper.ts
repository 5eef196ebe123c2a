import type { PitchEvent } from '#pitch/pitch-event'
import { shortName } from '#pitch/short-name'
import type { PlannedPlayer, PracticePlan } from '#planning/practice-plan'
import type { ColumnSeconds } from '#rotation/problem'

/**
 * A plan as a helper may see it: who goes where. What a player is behind by, what was agreed for it, who is kept apart
 * or together and what the coach holds fast is left out, and so is the proof, which speaks of it.
 */
export function planForHelper(plan: PracticePlan): PracticePlan {
  return {
    ...plan,
    players: plan.players.map(playerForHelper),
    apart: [],
    together: [],
    locks: [],
    proof: { sentence: '', value: 0, bound: 0, proven: false, restLimitUsed: plan.proof.restLimitUsed },
  }
}

/** Whoever asks not to keep today, or for good, simply does not keep. */
function playerForHelper({ keeps, notInGoal, gap, ...player }: PlannedPlayer): PlannedPlayer {
  return {
    ...player,
    keeps: keeps && !notInGoal,
    notInGoal: false,
    waitsAfterEachTurn: false,
    mostTurns: null,
    gap: Object.fromEntries(Object.keys(gap).map((column) => [column, 0])) as ColumnSeconds,
  }
}

/** What others tapped as a helper may see it: the places are the same, names are short, and no plan is argued for. */
export function eventForHelper(event: PitchEvent): PitchEvent {
  const { deed } = event
  if (deed.kind === 'guest') return { ...event, deed: { ...deed, name: shortName(deed.name) } }
  if (deed.kind === 'replan') return { ...event, deed: { ...deed, sentence: '' } }
  return event
}
