import 'server-only'
import { readPublishedGuidance } from '#exchange/published-guidance-json'
import type { PublishedGuidance } from '#practice/published-guidance'
import file from '../../seeds/published/guidance.json'

/** What bodies publish of pitches, heading and welfare: a file, so that a new season needs no new code. */
export const publishedGuidance: PublishedGuidance = readPublishedGuidance(file)
