'use server'

import { action } from '#server/action'
import { changeProgrammeOf } from '#server/change-programme'
import { addThemeOf, changeThemeOf, moveThemeOf } from '#server/change-theme'
import { moveThemeInput, newThemeInput, programmeInput, themeInput } from '#server/theme-input'

/** A theme more for the club. */
export const addTheme = action(newThemeInput, (viewer, input) => addThemeOf(viewer, input))

/** A theme's name, what it asks for and what it stands under. */
export const changeTheme = action(themeInput, (viewer, input) => changeThemeOf(viewer, input))

/** A theme one step up or down. */
export const moveTheme = action(moveThemeInput, (viewer, input) => moveThemeOf(viewer, input))

/** What a squad wishes for in a term. */
export const changeProgramme = action(programmeInput, (viewer, input) => changeProgrammeOf(viewer, input))
