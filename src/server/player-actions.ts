'use server'

import { action } from '#server/action'
import { addPlayerOf } from '#server/add-player'
import { agreeOf, endAgreementOf } from '#server/agree'
import { changeLinesOf } from '#server/change-lines'
import { changeMembershipOf } from '#server/change-membership'
import { changeAboutPlayerOf, changeKeepsOf } from '#server/change-player'
import {
  aboutPlayerInput,
  agreementInput,
  endAgreementInput,
  keepsInput,
  linesInput,
  membershipInput,
  newPlayerInput,
} from '#server/player-input'

/** A player who joins a squad. */
export const addPlayer = action(newPlayerInput, (viewer, input) => addPlayerOf(viewer, input))

/** A player's name, and whether it asks to keep goal. */
export const changeAboutPlayer = action(aboutPlayerInput, (viewer, input) =>
  changeAboutPlayerOf(viewer, input),
)

/** Whether a player may be put in goal, from a day on. */
export const changeKeeps = action(keepsInput, (viewer, input) => changeKeepsOf(viewer, input))

/** Which lines a player likes, is learning, or is not to be put in yet. */
export const changeLines = action(linesInput, (viewer, input) => changeLinesOf(viewer, input))

/** From when to when a player belongs to the squad. */
export const changeMembership = action(membershipInput, (viewer, input) => changeMembershipOf(viewer, input))

/** Something agreed with a player and its family. */
export const agree = action(agreementInput, (viewer, input) => agreeOf(viewer, input))

/** The last day of what was agreed. */
export const endAgreement = action(endAgreementInput, (viewer, input) => endAgreementOf(viewer, input))
