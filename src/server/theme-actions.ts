'use server'

import { action } from '#server/action'
import { changeProgrammeOf } from '#server/change-programme'
import { changeProgrammeBlocksOf, changeProgrammeRulesOf } from '#server/change-programme-rules'
import { addThemeOf, changeThemeOf, moveThemeOf } from '#server/change-theme'
import { changeThemeFocusOf } from '#server/change-theme-focus'
import {
  programmeBlocksInput,
  programmeRulesInput,
  takeProgrammeInput,
  themeFocusInput,
} from '#server/programme-input'
import { takeProgrammeOf } from '#server/take-programme'
import { moveThemeInput, newThemeInput, programmeInput, themeInput } from '#server/theme-input'

/** A theme more for the club. */
export const addTheme = action(newThemeInput, (viewer, input) => addThemeOf(viewer, input))

/** A theme's name, what it asks for and what it stands under. */
export const changeTheme = action(themeInput, (viewer, input) => changeThemeOf(viewer, input))

/** A theme one step up or down. */
export const moveTheme = action(moveThemeInput, (viewer, input) => moveThemeOf(viewer, input))

/** What a squad wishes for in a term. */
export const changeProgramme = action(programmeInput, (viewer, input) => changeProgrammeOf(viewer, input))

/** When the themes of a programme may come. */
export const changeProgrammeRules = action(programmeRulesInput, (viewer, input) =>
  changeProgrammeRulesOf(viewer, input),
)

/** Weeks that are kept for single themes. */
export const changeProgrammeBlocks = action(programmeBlocksInput, (viewer, input) =>
  changeProgrammeBlocksOf(viewer, input),
)

/** A programme of ours, or of another squad or term. */
export const takeProgramme = action(takeProgrammeInput, (viewer, input) => takeProgrammeOf(viewer, input))

/** What a theme is about, and which designs serve it. */
export const changeThemeFocus = action(themeFocusInput, (viewer, input) => changeThemeFocusOf(viewer, input))
