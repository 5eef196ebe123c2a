import 'server-only'
import { readPublishedFormats } from '#exchange/published-formats-json'
import type { PublishedFormats } from '#match/format/published-format'
import file from '../../seeds/published/match-formats.json'

/** Formats of bodies and our own, and rules of least time: a file, so that a new season needs no new code. */
export const publishedFormats: PublishedFormats = readPublishedFormats(file)
