'use server'

import { action } from '#server/action'
import { changePolicyOf } from '#server/change-policy'
import { policyInput } from '#server/policy-input'

/** A new version of the club's fair-play rules. */
export const changePolicy = action(policyInput, (viewer, input) => changePolicyOf(viewer, input))
