import { answerLineUpCall } from '#solver/answer-line-up-call'
import { serveCalls } from '#solver/serve-calls'

serveCalls(answerLineUpCall)
