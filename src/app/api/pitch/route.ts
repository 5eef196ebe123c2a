import { answerToday } from '#server/pitch-door'

/** Today's practices of whoever is signed in: see `PitchToday` of #pitch/pitch-today. */
export function GET(): Promise<Response> {
  return answerToday()
}
