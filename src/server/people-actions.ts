'use server'

import { action } from '#server/action'
import { recordGuardianOf, removeGuardianOf, withholdComingOf } from '#server/change-guardianship'
import { addPersonOf, changePersonOf, endAccessOf, giveAccessBackOf } from '#server/change-people'
import { addSquadLineOf, endSquadLineOf } from '#server/change-squad-lines'
import {
  changePersonInput,
  endSquadLineInput,
  guardianOfInput,
  newPersonInput,
  ofPersonInput,
  squadLineInput,
  withholdInput,
} from '#server/people-input'

/** An adult who comes to the club. */
export const addPerson = action(newPersonInput, (viewer, input) => addPersonOf(viewer, input))

/** Name, address and role of an adult. */
export const changePerson = action(changePersonInput, (viewer, input) => changePersonOf(viewer, input))

/** From now on an adult's sign-in opens nothing here. */
export const endAccess = action(ofPersonInput, (viewer, input) => endAccessOf(viewer, input))

/** What was ended is given back. */
export const giveAccessBack = action(ofPersonInput, (viewer, input) => giveAccessBackOf(viewer, input))

/** A squad that somebody coaches, covers or helps with. */
export const addSquadLine = action(squadLineInput, (viewer, input) => addSquadLineOf(viewer, input))

/** The last day with a squad. */
export const endLineOfSquad = action(endSquadLineInput, (viewer, input) => endSquadLineOf(viewer, input))

/** Whose parent or carer somebody is. */
export const recordGuardian = action(guardianOfInput, (viewer, input) => recordGuardianOf(viewer, input))

/** A child's page is closed to a guardian. */
export const removeGuardian = action(guardianOfInput, (viewer, input) => removeGuardianOf(viewer, input))

/** Whether time and place are kept from a guardian. */
export const withholdComing = action(withholdInput, (viewer, input) => withholdComingOf(viewer, input))
