'use server'

import { action } from '#server/action'
import { addAwayOf, removeAwayOf } from '#server/change-away'
import {
  addClosedDaysOf,
  addClubClosedDaysOf,
  removeClosedDaysOf,
  removeClubClosedDaysOf,
} from '#server/change-closed-days'
import { removeGroundOf, setGroundOf } from '#server/change-grounds'
import { enterWeeklyOf } from '#server/enter-weekly'
import {
  awayInput,
  closedDaysInput,
  clubClosedDaysInput,
  groundInput,
  removeAwayInput,
  removeClosedDaysInput,
  removeClubClosedDaysInput,
  removeGroundInput,
  weeklyInput,
} from '#server/weeks-input'

/** A practice in every week of a time. */
export const enterWeekly = action(weeklyInput, (viewer, input) => enterWeeklyOf(viewer, input))

/** Days without practice of a squad. */
export const addClosedDays = action(closedDaysInput, (viewer, input) => addClosedDaysOf(viewer, input))
export const removeClosedDays = action(removeClosedDaysInput, (viewer, input) =>
  removeClosedDaysOf(viewer, input),
)

/** Days without practice of the whole club. */
export const addClubClosedDays = action(clubClosedDaysInput, (viewer, input) =>
  addClubClosedDaysOf(viewer, input),
)
export const removeClubClosedDays = action(removeClubClosedDaysInput, (viewer, input) =>
  removeClubClosedDaysOf(viewer, input),
)

/** How large a ground is. */
export const setGround = action(groundInput, (viewer, input) => setGroundOf(viewer, input))
export const removeGround = action(removeGroundInput, (viewer, input) => removeGroundOf(viewer, input))

/** Days on which a player is known to be away. */
export const addAway = action(awayInput, (viewer, input) => addAwayOf(viewer, input))
export const removeAway = action(removeAwayInput, (viewer, input) => removeAwayOf(viewer, input))
