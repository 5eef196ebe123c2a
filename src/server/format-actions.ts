'use server'

import { action } from '#server/action'
import { putFormatAwayOf, saveFormatOf } from '#server/change-format'
import {
  chooseFormatInput,
  putFormatAwayInput,
  saveFormatInput,
  takeFormatInput,
  takeLeastTimeInput,
} from '#server/format-input'
import { chooseFormatOf, takeFormatOf, takeLeastTimeOf } from '#server/take-format'

/** A match format, new or changed. */
export const saveFormat = action(saveFormatInput, (viewer, input) => saveFormatOf(viewer, input))

/** A published format, or one of ours, for the club. */
export const takeFormat = action(takeFormatInput, (viewer, input) => takeFormatOf(viewer, input))

/** A published rule of least time, into a format of the club. */
export const takeLeastTime = action(takeLeastTimeInput, (viewer, input) => takeLeastTimeOf(viewer, input))

/** Put away, or taken out again. */
export const putFormatAway = action(putFormatAwayInput, (viewer, input) => putFormatAwayOf(viewer, input))

/** Which format a squad plays. */
export const chooseFormat = action(chooseFormatInput, (viewer, input) => chooseFormatOf(viewer, input))
