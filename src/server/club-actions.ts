'use server'

import { action } from '#server/action'
import { changeClubOf } from '#server/change-club'
import { saveSeasonOf } from '#server/change-season'
import { saveSquadOf } from '#server/change-squad'
import {
  clubSettingsInput,
  countGoalsInput,
  seasonInput,
  squadInput,
  takeOurContentInput,
} from '#server/club-input'
import { countGoalsOf } from '#server/count-goals'
import { takeOurContentOf } from '#server/take-our-content'

/** The club's name and time zone. */
export const changeClub = action(clubSettingsInput, (viewer, input) => changeClubOf(viewer, input))

/** Whether goals of matches are counted. */
export const countGoals = action(countGoalsInput, (viewer, input) => countGoalsOf(viewer, input))

/** A season with its terms, new or changed. */
export const saveSeason = action(seasonInput, (viewer, input) => saveSeasonOf(viewer, input))

/** A squad, new or changed. */
export const saveSquad = action(squadInput, (viewer, input) => saveSquadOf(viewer, input))

/** Our own themes, designs and match formats, for a club that has none. */
export const takeOurContent = action(takeOurContentInput, (viewer) => takeOurContentOf(viewer))
