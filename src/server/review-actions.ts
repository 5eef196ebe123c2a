'use server'

import { action } from '#server/action'
import {
  answerReviewInput,
  answerReviewOf,
  handOverInput,
  handOverOf,
  openReviewInput,
  openReviewOf,
} from '#server/review-deeds'

/** Shows a term's review to the squads' coaches. */
export const openReview = action(openReviewInput, (viewer, input) => openReviewOf(viewer, input))

/** A coach's answer to the review of its squad. */
export const answerTermReview = action(answerReviewInput, (viewer, input) => answerReviewOf(viewer, input))

/** A squad given to another coach. */
export const handOver = action(handOverInput, (viewer, input) => handOverOf(viewer, input))
