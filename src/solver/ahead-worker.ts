import { answerAheadCall } from '#solver/answer-ahead-call'
import { serveCalls } from '#solver/serve-calls'

serveCalls(answerAheadCall)
