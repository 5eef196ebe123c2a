'use server'

import { action } from '#server/action'
import { endPairInput, newPairInput, planInput } from '#server/plan-input'
import { addPairOf, endPairOf } from '#server/player-pairs'
import { savePlanOf } from '#server/save-plan'

/** The plan of a practice. */
export const savePracticePlan = action(planInput, savePlanOf)

/** Two players kept apart or together for some days. */
export const addPlayerPair = action(newPairInput, addPairOf)

/** The last day of such a pair. */
export const endPlayerPair = action(endPairInput, endPairOf)
