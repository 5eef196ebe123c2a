import type { PlannedPlayer, PracticePlan } from '#planning/practice-plan'
import { noSeconds } from '#rotation/fair-seconds'

/**
 * A plan as a helper may see it: who goes where. What a player is behind by, what was agreed for it, who is kept apart
 * or together and what the coach holds fast is left out, and so is the proof, which speaks of it. Only what is named
 * here goes out: whatever a plan comes to hold stays with the coach.
 */
export function planForHelper({ design, players, rules, turns, proof }: PracticePlan): PracticePlan {
  const { restLimit, isGentle, keepsSides } = rules
  const { restLimitUsed } = proof
  return {
    design,
    players: players.map((player) => playerForHelper(player, design.sides !== null)),
    rules: { restLimit, isGentle, keepsSides },
    apart: [],
    together: [],
    locks: [],
    turns,
    proof: { sentence: '', value: 0, bound: 0, proven: false, restLimitUsed },
  }
}

/** Whoever asks not to keep today, or for good, simply does not keep. Without bibs a side is somebody's own agreement. */
function playerForHelper(
  { playerId, keeps, notInGoal, side, present }: PlannedPlayer,
  hasBibs: boolean,
): PlannedPlayer {
  return {
    playerId,
    keeps: keeps && !notInGoal,
    side: hasBibs ? side : null,
    present,
    notInGoal: false,
    waitsAfterEachTurn: false,
    mostTurns: null,
    gap: noSeconds,
  }
}
