'use server'

import { action } from '#server/action'
import { saveTermPlanOf } from '#server/save-term-plan'
import { termPlanInput } from '#server/term-plan-input'

/** The plan of a squad's term. */
export const saveWeeksAhead = action(termPlanInput, (viewer, input) => saveTermPlanOf(viewer, input))
