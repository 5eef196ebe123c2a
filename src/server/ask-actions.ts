'use server'

import { action } from '#server/action'
import { askAboutChildOf } from '#server/ask-about-child'
import { askInput } from '#server/rights-input'

/** What a guardian asks about what is kept of its child. */
export const askAboutChild = action(askInput, (viewer, input) => askAboutChildOf(viewer, input))
