'use server'

import { action } from '#server/action'
import { addDesignOf, changeDesignOf, copyDesignOf, putDesignAwayOf } from '#server/change-design'
import { designInput, designOfSquad, newDesignInput, putAwayInput } from '#server/design-input'

/** A design more for the club. */
export const addDesign = action(newDesignInput, (viewer, input) => addDesignOf(viewer, input))

/** Everything of a design. */
export const changeDesign = action(designInput, (viewer, input) => changeDesignOf(viewer, input))

/** A copy to be edited. */
export const copyDesign = action(designOfSquad, (viewer, input) => copyDesignOf(viewer, input))

/** Put away, or taken out again. */
export const putDesignAway = action(putAwayInput, (viewer, input) => putDesignAwayOf(viewer, input))
