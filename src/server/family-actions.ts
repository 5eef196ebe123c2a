'use server'

import { action } from '#server/action'
import { confirmPagesInput, confirmPagesOf } from '#server/confirm-family-pages'
import { familyNoteInput, saveFamilyNoteOf } from '#server/save-family-note'
import { switchComingInput, switchComingOf } from '#server/switch-coming'

/** What a coach has seen becomes what families read. */
export const confirmPages = action(confirmPagesInput, confirmPagesOf)

/** A coach's note to one child's family. */
export const writeFamilyNote = action(familyNoteInput, saveFamilyNoteOf)

/** Whether families read time and place of what comes. */
export const switchComing = action(switchComingInput, switchComingOf)
