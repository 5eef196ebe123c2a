'use server'

import { action } from '#server/action'
import {
  answerRequestOf,
  changeClubRightsOf,
  extendRequestOf,
  writeDownRequestOf,
} from '#server/answer-requests'
import { answerInput, clubRightsInput, extendInput, writeDownInput } from '#server/rights-input'

/** A request that came by word of mouth or letter. */
export const writeDownRequest = action(writeDownInput, (viewer, input) => writeDownRequestOf(viewer, input))

/** More time for a request that is hard to answer. */
export const extendRequest = action(extendInput, (viewer, input) => extendRequestOf(viewer, input))

/** What the family is told, and how it ended. */
export const answerRequest = action(answerInput, (viewer, input) => answerRequestOf(viewer, input))

/** How long names are kept, whom families ask, which days are public holidays. */
export const changeClubRights = action(clubRightsInput, (viewer, input) => changeClubRightsOf(viewer, input))
