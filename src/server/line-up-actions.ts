'use server'

import { action } from '#server/action'
import { lineUpInput } from '#server/line-up-input'
import { saveLineUpOf } from '#server/save-line-up'

/** The line-up of a match. */
export const saveLineUp = action(lineUpInput, saveLineUpOf)
