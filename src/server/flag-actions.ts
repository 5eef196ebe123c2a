'use server'

import { action } from '#server/action'
import { answerFlagOf, flagAnswerInput } from '#server/answer-flag'

/** A coach's answer to a flag. */
export const answerFlag = action(flagAnswerInput, answerFlagOf)
