'use server'

import { action } from '#server/action'
import { writeAsPlannedOf } from '#server/as-planned'
import { confirmPitchOf } from '#server/confirm-pitch'
import { joinGuestOf } from '#server/join-guest'
import { asPlannedInput, confirmInput, joinGuestInput } from '#server/whistle-input'

/** A practice or match into the book, as it was tapped. */
export const writeFromPitch = action(confirmInput, (viewer, input) => confirmPitchOf(viewer, input))

/** A practice or match into the book that was played and not tapped, by one question. */
export const writeAsPlanned = action(asPlannedInput, (viewer, input) => writeAsPlannedOf(viewer, input))

/** A guest is a player of the club after all. */
export const joinGuestToPlayer = action(joinGuestInput, (viewer, input) => joinGuestOf(viewer, input))
