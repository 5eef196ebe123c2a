import type { MatchPlanRequest } from '#lineup/match-plan'

/** Another request than the one on the page, and how it differs: "without …", "with two changes fewer". */
export type LineUpChoice = {
  readonly key: string
  readonly words: string
  readonly request: MatchPlanRequest
}
